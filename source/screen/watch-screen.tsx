import { useWindowSize } from 'ink';
import { useSyncExternalStore } from 'react';
import type { Size, Style } from './context.js';
import type { Key } from './input/key.js';
import type { ConsoleExit } from './options.js';
import { Rows } from './rows.js';
import { sparedRows } from './style.js';
import { useKeys } from './use-keys.js';
import { watchFrame } from './watch-frame.js';
import type { WatchModel } from './watch-model.js';

type WatchScreenProps = {
  readonly model: WatchModel;
  readonly style: Style;
  readonly onLeave: (how: ConsoleExit) => void;
  /** Missing: the window's own. */
  readonly size?: Size;
};

/** No key does anything but leave. */
const exitOf = (key: Key): ConsoleExit | null => {
  if (key.kind === 'interrupt') return 'interrupted';
  if (key.kind === 'escape') return 'left';
  return key.kind === 'char' && key.char.toLowerCase() === 'q' ? 'left' : null;
};

export const WatchScreen = ({ model, style, onLeave, size }: WatchScreenProps) => {
  const window = useWindowSize();
  const { columns, rows } = size ?? window;
  const watched = useSyncExternalStore(model.subscribe, model.snapshot, model.snapshot);
  useKeys({
    key: (key) => {
      const how = exitOf(key);
      if (how !== null) onLeave(how);
    },
    paste: () => undefined,
  });
  return (
    <Rows lines={watchFrame(watched, { columns, rows: rows - sparedRows }, style)} paints={style.paints} />
  );
};
