import { isLanguage, type Language } from '../units/language.js';
import type { World } from './world.js';

/** What is known of the language before anything is loaded: apart, because the opening line waits for nothing. */
export const languageOption = '--language';

/** The last value of an option as typed: `--name value` or `--name=value`; undefined where it was not given. */
export const given = (argv: readonly string[], name: string): string | undefined =>
  argv
    .map((word, place) =>
      word === name
        ? (argv[place + 1] ?? '')
        : word.startsWith(`${name}=`)
          ? word.slice(name.length + 1)
          : null,
    )
    .findLast((value) => value !== null) ?? undefined;

/** The language of the locale, by the order of POSIX.1 (2017), 8.2; null where the program does not speak it. */
export const inLocale = ({ LC_ALL, LC_MESSAGES, LANG }: World['env']): Language | null => {
  const named = (LC_ALL || LC_MESSAGES || LANG || '').slice(0, 2).toLowerCase();
  return isLanguage(named) ? named : null;
};

/** As far as it shows in what was typed and in the locale: the kitchen file may know better. */
export const languageAtOnce = (argv: readonly string[], env: World['env']): Language => {
  const asked = given(argv, languageOption)?.trim().toLowerCase() ?? '';
  return isLanguage(asked) ? asked : (inLocale(env) ?? 'en');
};
