import { useWindowSize } from 'ink';
import { useSyncExternalStore } from 'react';
import type { Size, Style } from './context.js';
import { frame } from './frame.js';
import type { ConsoleModel } from './model.js';
import { Rows } from './rows.js';
import { sparedRows } from './style.js';
import { useKeys } from './use-keys.js';

type ConsoleScreenProps = {
  readonly model: ConsoleModel;
  readonly style: Style;
  /** Missing: the window's own. */
  readonly size?: Size;
};

export const ConsoleScreen = ({ model, style, size }: ConsoleScreenProps) => {
  const window = useWindowSize();
  const { columns, rows } = size ?? window;
  const shown = useSyncExternalStore(model.subscribe, model.snapshot, model.snapshot);
  useKeys(model);
  const { lines } = frame(shown, { columns, rows: rows - sparedRows }, style);
  return <Rows lines={lines} paints={style.paints} />;
};
