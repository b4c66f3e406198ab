import { takeOverFirstFrame } from './first-frame.js';
import { takeOpeningAway } from './opening.js';
import { Thrift } from './thrifty.js';

const enter = '\u001b[?1049h';
const home = '\u001b[H';
const cleared = '\u001b[2K';

/**
 * The terminal's output as Ink may have it. Ink draws where the cursor is, and the alternate screen takes over its place
 * from the shell: behind half a line that somebody typed, the first row would be broken. It begins at the top here, and
 * of each frame only what is new in it is written.
 */
export const screenOf = (stdout: NodeJS.WriteStream): NodeJS.WriteStream => {
  const thrift = new Thrift();
  let isAlternate = false;
  /** A frame stands there already: the next one is drawn over it. */
  let isOver = false;
  const over = (text: string): string => {
    isOver = false;
    return text
      .split('\n')
      .map((row) => cleared + row)
      .join('\n');
  };
  const shown = (text: unknown): unknown => {
    if (typeof text !== 'string') return text;
    if (text === enter) isAlternate = true;
    const thrifty = isAlternate ? thrift.of(text, stdout) : text;
    if (text === enter) {
      isOver = takeOverFirstFrame();
      takeOpeningAway();
      return isOver ? home : `${enter}${home}`;
    }
    return isOver && text.includes('\n') ? over(text) : thrifty;
  };
  return new Proxy(stdout, {
    get: (target, name) => {
      const value: unknown = Reflect.get(target, name, target);
      if (typeof value !== 'function') return value;
      if (name !== 'write') return value.bind(target);
      return (text: unknown, ...rest: readonly unknown[]): unknown =>
        value.call(target, shown(text), ...rest);
    },
    set: (target, name, value) => Reflect.set(target, name, value, target),
  });
};
