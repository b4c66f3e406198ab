/**
 * What the console is measured against: a program of the same rows and the same library, built the same way, that knows
 * nothing. It shows the rows of a file, takes digits, and moves a clock on if it is asked to.
 */
import { readFileSync } from 'node:fs';
import { Box, render, Text, useInput } from 'ink';
import { useEffect, useState } from 'react';

type Piece = {
  readonly text: string;
  readonly bold: boolean;
  readonly dim: boolean;
  readonly color: string | null;
};
export type Row = readonly Piece[];

const [file = '', ticking = ''] = process.argv.slice(2);
const rows = JSON.parse(readFileSync(file, 'utf8')) as readonly Row[];

const plain = (text: string): Row => [{ text, bold: false, dim: false, color: null }];

const Line = ({ row }: { readonly row: Row }) => (
  <Text wrap="truncate-end">
    {row.length === 0
      ? ' '
      : row.map(({ text, bold, dim, color }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row's pieces have no other name than their place
          <Text key={index} bold={bold} dimColor={dim} {...(color === null ? {} : { color })}>
            {text}
          </Text>
        ))}
  </Text>
);

const Bare = () => {
  const [entry, setEntry] = useState('');
  const [seconds, setSeconds] = useState(0);
  useInput((input, key) => {
    if (key.backspace) setEntry((text) => text.slice(0, -1));
    else if (key.return) setEntry('');
    else setEntry((text) => text + input);
  });
  useEffect(() => {
    if (ticking !== 'clock') return;
    const timer = setInterval(() => setSeconds((one) => one + 1), 1000);
    return () => clearInterval(timer);
  }, []);
  return (
    <Box flexDirection="column">
      {rows
        .map((row, place) => {
          if (place === 1) return plain(`running for ${seconds} s`);
          return place === 2 ? plain(`> ${entry}▌`) : row;
        })
        .map((row, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows are places
          <Line key={index} row={row} />
        ))}
    </Box>
  );
};

render(<Bare />, { alternateScreen: true, incrementalRendering: true, interactive: true, exitOnCtrlC: true });
