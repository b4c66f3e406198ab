import { Box, Text } from 'ink';
import { type Look, paintOf } from './looks.js';
import type { Line } from './text.js';

type RowsProps = { readonly lines: readonly Line[]; readonly color: boolean };

const Row = ({ line, color }: { readonly line: Line; readonly color: boolean }) => (
  // An empty Text has no height: a space keeps the row.
  <Text wrap="truncate-end">
    {line.every(({ text }) => text === '')
      ? ' '
      : line.map(({ text, look }: { text: string; look: Look }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row's pieces have no other name than their place
          <Text key={index} {...paintOf(look, color)}>
            {text}
          </Text>
        ))}
  </Text>
);

/** Rows of the screen, one below the other, as they are. */
export const Rows = ({ lines, color }: RowsProps) => (
  <Box flexDirection="column">
    {lines.map((line, index) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: rows are places
      <Row key={index} line={line} color={color} />
    ))}
  </Box>
);
