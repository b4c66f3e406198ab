import { bounds, readNamedFile } from '../files/read.js';
import { type Message, message } from '../texts/message.js';
import { isLanguage, type Language, languageIds } from '../units/language.js';
import { given, inLocale, languageOption } from './language-at-once.js';
import { kitchenPath } from './named.js';
import type { World } from './world.js';

export type Spoken = {
  readonly language: Language;
  /** What was typed without the choice of a language. */
  readonly argv: readonly string[];
};

const without = (argv: readonly string[], name: string): readonly string[] =>
  argv.filter((word, place) => word !== name && !word.startsWith(`${name}=`) && argv[place - 1] !== name);

/** A glance at the kitchen file: a language has to be known before anything of it can be complained about. */
const inKitchen = async (path: string): Promise<Language | null> => {
  const read = await readNamedFile(path, bounds.kitchen);
  if ('problem' in read) return null;
  const named = /^language:[ \t]*["']?([\w-]+)/m.exec(read.text)?.[1]?.toLowerCase() ?? '';
  return isLanguage(named) ? named : null;
};

/**
 * What this person reads: the option, else the kitchen file, else the locale, else English. What a program reads
 * (`--json`) does not follow the locale: it is English unless a language is asked for.
 */
export const spoken = async (
  argv: readonly string[],
  { env }: Pick<World, 'env'>,
): Promise<Spoken | { readonly problem: Message }> => {
  const named = given(argv, languageOption);
  const rest = without(argv, languageOption);
  if (named !== undefined) {
    const found = named.trim().toLowerCase();
    return isLanguage(found)
      ? { language: found, argv: rest }
      : {
          problem: message('command.unknown-language', { found: named.slice(0, 40), names: languageIds }),
        };
  }
  const kitchen = given(argv, '--kitchen') ?? kitchenPath({ env });
  const byLocale = argv.includes('--json') ? null : inLocale(env);
  return { language: (await inKitchen(kitchen)) ?? byLocale ?? 'en', argv: rest };
};
