import { useInput, usePaste } from 'ink';
import { useRef } from 'react';
import { type Key, KeyReader, pastedLine } from './input/key.js';

type Receiver = { key(key: Key): void; paste(text: string): void };

/** The one place that hears the keyboard. Pastes come apart from keys and never act. */
export const useKeys = (receiver: Receiver): void => {
  const reader = useRef(new KeyReader());
  useInput((input, modifiers) => {
    for (const key of reader.current.read(input, modifiers)) receiver.key(key);
  });
  usePaste((text) => receiver.paste(pastedLine(text)));
};
