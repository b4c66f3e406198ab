import { mkdir } from 'node:fs/promises';
import { homedir } from 'node:os';
import { isAbsolute, join, resolve } from 'node:path';
import envPaths from 'env-paths';
import { type Message, message } from '../texts/message.js';
import { shownPath } from './names.js';
import { codeOf, writeProblem } from './trouble.js';

type Environment = Readonly<Record<string, string | undefined>>;

const name = 'kettlehand';

const chosen = (env: Environment): string | null =>
  env.KETTLEHAND_HOME ? resolve(env.KETTLEHAND_HOME) : null;

/** XDG Base Directory Specification 0.8 (freedesktop.org, 2021): a relative value is invalid and is ignored. */
const underHome = (env: Environment, value: string | undefined, ...fallback: string[]): string => {
  if (value !== undefined && isAbsolute(value)) return join(value, name);
  return join(env.HOME !== undefined && isAbsolute(env.HOME) ? env.HOME : homedir(), ...fallback, name);
};

const followsXdg = process.platform !== 'darwin' && process.platform !== 'win32';

/** Where journals and learned kitchens live; KETTLEHAND_HOME overrides it. An absolute path; not created here. */
export const dataFolder = (env: Environment): string =>
  chosen(env) ??
  (followsXdg ? underHome(env, env.XDG_DATA_HOME, '.local', 'share') : envPaths(name, { suffix: '' }).data);

/** Where the person's own kitchen and recipe files live; KETTLEHAND_HOME overrides it. Not created here. */
export const configFolder = (env: Environment): string =>
  chosen(env) ??
  (followsXdg ? underHome(env, env.XDG_CONFIG_HOME, '.config') : envPaths(name, { suffix: '' }).config);

/** Make a folder, and those above it, that only the owner can enter (0700). One that is there keeps its mode. */
export const makeFolder = async (path: string): Promise<'made' | { readonly problem: Message }> => {
  try {
    await mkdir(path, { recursive: true, mode: 0o700 });
    return 'made';
  } catch (error) {
    if (codeOf(error) === 'EEXIST')
      return { problem: message('files.notAFolder', { path: shownPath(path) }) };
    return { problem: writeProblem(error, path) };
  }
};
