import { message } from '../texts/message.js';
import { handout } from './handout.js';
import { type ExitCode, fail } from './io.js';
import { recipeNames, shelfOf } from './named.js';
import { flag, parse, text } from './options.js';
import { findRecipe } from './shelf.js';
import type { World } from './world.js';

const help = `
  Examples
    $ kettlehand handout mint-pull                       a page for the audience, as Markdown
    $ kettlehand handout mint-pull --html > mint.html    to print on A4 or Letter, or to send
    $ kettlehand handout mint-pull --batch 0.5           half of it, for a smaller pot at home

  Amounts in both systems, steps, the cold-water test, cautions, first aid, allergens, storage,
  your own words from the recipe's cues, and room for more. For any kitchen: it says how to shift
  the target for a hill or a thermometer that is off.

  Options
    --html   --markdown (default)
    --pieces N   --batch 1.5
`;

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const string = { type: 'string' } as const;
  const boolean = { type: 'boolean' } as const;
  const { words, given } = parse(
    argv,
    help,
    { html: boolean, markdown: boolean, pieces: string, batch: string },
    world,
  );
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
    },
    {
      language: world.language,
      out: world.out,
      err: world.err,
      readRecipe: () => findRecipe(recipe, shelfOf(world)),
    },
  );
};
