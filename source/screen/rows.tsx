import { Box, Text, useStdout } from 'ink';
import { memo, useMemo } from 'react';
import type { Paints } from './palette.js';
import { penned, pensFor } from './pens.js';
import type { Line } from './text.js';

type RowsProps = { readonly lines: readonly Line[]; readonly paints: Paints };

/** A terminal's colours in bits; of what is no terminal 0: nothing but text. */
const bitsOf = (stdout: NodeJS.WriteStream): number =>
  stdout.isTTY ? (stdout.getColorDepth?.(process.env) ?? 1) : 0;

/** Written out before Ink has it: a row that did not change costs nothing, and one that did is one piece of text. */
const Row = memo(({ text }: { readonly text: string }) => (
  // An empty Text has no height: a space keeps the row.
  <Text wrap="truncate-end">{text === '' ? ' ' : text}</Text>
));

/** Rows of the screen, one below the other, as they are. */
export const Rows = ({ lines, paints }: RowsProps) => {
  const { stdout } = useStdout();
  const pens = useMemo(() => pensFor(paints, bitsOf(stdout)), [paints, stdout]);
  return (
    <Box flexDirection="column">
      {lines.map((line, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows are places
        <Row key={index} text={penned(line, pens)} />
      ))}
    </Box>
  );
};
