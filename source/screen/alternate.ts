import { Thrift } from './thrifty.js';

const enter = '\u001b[?1049h';
const home = '\u001b[H';

/**
 * The terminal's output as Ink may have it. Ink draws where the cursor is, and the alternate screen takes over its place
 * from the shell: behind half a line that somebody typed, the first row would be broken. It begins at the top here, and
 * of each frame only what is new in it is written.
 */
export const screenOf = (stdout: NodeJS.WriteStream): NodeJS.WriteStream => {
  const thrift = new Thrift();
  let isAlternate = false;
  const shown = (text: unknown): unknown => {
    if (typeof text !== 'string') return text;
    if (text === enter) isAlternate = true;
    const thrifty = isAlternate ? thrift.of(text, stdout) : text;
    return text === enter ? `${enter}${home}` : thrifty;
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
