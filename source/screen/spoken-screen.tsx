import { Box, Static, Text } from 'ink';
import { useRef, useSyncExternalStore } from 'react';
import type { Style } from './context.js';
import type { ConsoleModel } from './model.js';
import { type Spoken, speak } from './spoken.js';
import { useKeys } from './use-keys.js';

type SpokenScreenProps = { readonly model: ConsoleModel; readonly style: Style };

/** The cook for a screen reader: what is new is appended, in the order in which it is spoken; nothing is said twice. */
export const SpokenScreen = ({ model, style }: SpokenScreenProps) => {
  const shown = useSyncExternalStore(model.subscribe, model.snapshot, model.snapshot);
  const spoken = useRef<Spoken | null>(null);
  if (spoken.current?.shown !== shown) spoken.current = speak(spoken.current, shown, style);
  useKeys(model);
  const { lines, open } = spoken.current;
  return (
    <>
      <Static items={[...lines]}>{(line, index) => <Text key={index}>{line}</Text>}</Static>
      <Box flexDirection="column">
        {open.map((line, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows are places
          <Text key={index}>{line}</Text>
        ))}
      </Box>
    </>
  );
};
