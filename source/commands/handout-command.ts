import { message } from '../texts/message.js';
import { handout } from './handout.js';
import { type ExitCode, fail } from './io.js';
import { recipeNames, shelfOf } from './named.js';
import { flag, parse, text, texts } from './options.js';
import { findRecipe } from './shelf.js';
import type { World } from './world.js';

const help = `
  Examples
    $ kettlehand handout mint-pull                       a page for the audience, as Markdown
    $ kettlehand handout mint-pull --html > mint.html    to print on A4 or Letter, or to send
    $ kettlehand handout mint-pull --pot 2l              as much as a pot of two litres takes
    $ kettlehand handout mint-pull --have sugar=300g     as much as what is at home is enough for

  Amounts in both systems, steps, the cold-water test, cautions, first aid, allergens, storage,
  your own words from the recipe's cues, and room for more. For any kitchen: it says how to shift
  the target for a hill or a thermometer that is off.

  Options
    --html   --markdown (default)
    --pieces N   --batch 1.5        how much, or
    --have ITEM=AMOUNT   --pot 2l   what there is at home, --have as often as needed: the scarcest decides
`;

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const string = { type: 'string' } as const;
  const boolean = { type: 'boolean' } as const;
  const { words, given } = parse(
    argv,
    help,
    {
      html: boolean,
      markdown: boolean,
      pieces: string,
      batch: string,
      pot: string,
      have: { type: 'string', isMultiple: true },
    },
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
      pot: text(given.pot),
      // The option reader drops an option that ends the line without a value.
      have: [...texts(given.have), ...(argv.at(-1) === '--have' ? [''] : [])],
    },
    {
      language: world.language,
      out: world.out,
      err: world.err,
      readRecipe: () => findRecipe(recipe, shelfOf(world)),
    },
  );
};
