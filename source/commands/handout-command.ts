import { message } from '../texts/message.js';
import { handout } from './handout.js';
import { type ExitCode, fail } from './io.js';
import { recipeNames, shelfOf } from './named.js';
import { boolean, flag, parse, string, text, texts } from './options.js';
import { findRecipe } from './shelf.js';
import type { World } from './world.js';

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, {
    html: boolean,
    markdown: boolean,
    pieces: string,
    batch: string,
    pot: string,
    have: { type: 'string', isMultiple: true },
  });
  const [recipe, extra] = words;
  if (recipe === undefined)
    return fail(
      world,
      2,
      message('command.needs-recipe', { command: 'handout', names: await recipeNames(world) }),
    );
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'handout' }));
  return handout(
    {
      html: flag(given.html),
      markdown: flag(given.markdown),
      pieces: text(given.pieces),
      batch: text(given.batch),
      pot: text(given.pot),
      have: texts(given.have),
    },
    {
      language: world.language,
      out: world.out,
      err: world.err,
      readRecipe: () => findRecipe(recipe, shelfOf(world)),
    },
  );
};
