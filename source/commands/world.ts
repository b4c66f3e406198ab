import type { CommandIo } from './io.js';

/** What a command may touch of the world outside: given by `cli.ts`, replaced in tests. */
export type World = CommandIo & {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly version: string;
};
