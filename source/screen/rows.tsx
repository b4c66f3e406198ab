import { Box, Text } from 'ink';
import type { Look } from './looks.js';
import type { Paints } from './palette.js';
import type { Line } from './text.js';

type RowsProps = { readonly lines: readonly Line[]; readonly paints: Paints };

const Row = ({ line, paints }: { readonly line: Line; readonly paints: Paints }) => (
  // An empty Text has no height: a space keeps the row.
  <Text wrap="truncate-end">
    {line.every(({ text }) => text === '')
      ? ' '
      : line.map(({ text, look }: { text: string; look: Look }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row's pieces have no other name than their place
          <Text key={index} {...paints[look]}>
            {text}
          </Text>
        ))}
  </Text>
);

/** Rows of the screen, one below the other, as they are. */
export const Rows = ({ lines, paints }: RowsProps) => (
  <Box flexDirection="column">
    {lines.map((line, index) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: rows are places
      <Row key={index} line={line} paints={paints} />
    ))}
  </Box>
);
