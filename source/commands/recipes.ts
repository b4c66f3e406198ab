import { parseKitchen } from '../kitchen/parse.js';
import { balanceOf } from '../recipe/balance.js';
import { type Item, items, nearest } from '../recipe/items.js';
import { recipeNotes } from '../recipe/notes.js';
import { parseRecipe } from '../recipe/parse.js';
import type { Recipe } from '../recipe/recipe.js';
import { type Doctor, doctors, substituteDoctor } from '../recipe/substitution.js';
import { wallCare } from '../recipe/wall-care.js';
import { type Message, message, words } from '../texts/message.js';
import { jsonText } from '../units/escape.js';
import type { Printer } from '../units/printer.js';
import { type CommandIo, type ExitCode, fail, failFile, plainIn } from './io.js';
import { findRecipe, type ShelfIo, shelf } from './shelf.js';

export type RecipesIo = CommandIo & ShelfIo;
export type RecipesOptions = { readonly json?: boolean | undefined; readonly printer?: Printer | undefined };

const totalGrams = (recipe: Recipe): number => recipe.ingredients.reduce((sum, one) => sum + one.grams, 0);

type Saying = (said: Message) => string;
type Call = { readonly io: RecipesIo; readonly json: boolean; readonly say: Saying };

const asJson = (value: unknown): string => `${jsonText({ version: 1, ...(value as object) }, 2)}\n`;
const noteTexts = (notes: readonly Message[], say: Saying) =>
  notes.map((note) => ({ id: note.id, text: say(note) }));
const lines = (...texts: readonly string[]): string => `${texts.join('\n')}\n`;

const list = async ({ io, json, say }: Call): Promise<ExitCode> => {
  const all = await shelf(io);
  let code: ExitCode = 0;
  const good: { id: string; file: string; recipe: Recipe }[] = [];
  for (const { id, file, parsed } of all) {
    if ('recipe' in parsed) good.push({ id, file, recipe: parsed.recipe });
    else code = 'problem' in parsed ? fail(io, 1, parsed.problem) : failFile(io, parsed.problems);
  }
  if (all.length === 0)
    return fail(io, 1, message('shelf.folder-missing', { path: io.folders.at(-1) ?? '' }));
  if (json) {
    const recipes = good.map(({ id, file, recipe }) => ({
      id,
      file,
      name: recipe.name,
      about: recipe.about,
      target: recipe.target,
      grams: totalGrams(recipe),
      allergens: recipe.allergens,
    }));
    io.out(asJson({ recipes }));
    return code;
  }
  const wide = Math.max(...good.map(({ id }) => id.length), 0);
  for (const { id, recipe } of good) {
    const [low, high] = recipe.target.celsius;
    const row = { name: recipe.name, low, high, feels: recipe.target.feels, grams: totalGrams(recipe) };
    io.out(lines(`${id.padEnd(wide)}  ${say(message('shelf.row', row))}`));
  }
  return code;
};

const stirTexts = { 'until-boil': 'shelf.stir.until-boil', late: 'shelf.stir.late' } as const;
const wallTexts = {
  lid: 'shelf.wall.lid',
  brush: 'shelf.wall.brush',
  'none-late-stir': 'shelf.wall.none-late-stir',
} as const;

const sheet = (recipe: Recipe, notes: readonly Message[], say: Saying): string => {
  const { name, about, ingredients, target, stir, hands, surface, dust, piece, allergens } = recipe;
  const [low, high] = target.celsius;
  return lines(
    say(message('shelf.title', { name, about })),
    '',
    ...ingredients.map(({ amount, grams, name: of, de, phase }) =>
      say(message('shelf.ingredient', { amount, grams, name: of, de, phase })),
    ),
    '',
    say(message('shelf.target', { low, high, feels: target.feels })),
    say(message(stirTexts[stir])),
    say(message(wallTexts[wallCare(recipe)])),
    say(message('shelf.handling', { hands, surface, dust })),
    say(message('shelf.piece', piece)),
    say(message('shelf.balance', { ratio: balanceOf(recipe).ratio })),
    say(message('shelf.allergens', { allergens })),
    ...notes.map((note) => `- ${say(note)}`),
  );
};

const show = async (named: string | undefined, { io, json, say }: Call): Promise<ExitCode> => {
  if (named === undefined) return fail(io, 2, message('shelf.name-needed', { action: 'show' }));
  const found = await findRecipe(named, io);
  if ('problem' in found) return fail(io, found.wrongUse ? 2 : 1, found.problem);
  const parsed = parseRecipe(found.text, found.name);
  if ('problems' in parsed) return failFile(io, parsed.problems);
  const notes = [...parsed.notes, ...recipeNotes(parsed.recipe)];
  const balance = balanceOf(parsed.recipe);
  const ratio = Number.isFinite(balance.ratio) ? balance.ratio : null;
  io.out(
    json
      ? asJson({
          file: found.name,
          recipe: parsed.recipe,
          walls: wallCare(parsed.recipe),
          balance: { ...balance, ratio },
          notes: noteTexts(notes, say),
        })
      : sheet(parsed.recipe, notes, say),
  );
  return 0;
};

const isDoctor = (named: string): named is Doctor => (doctors as readonly string[]).includes(named);

/** The same candy with another doctor: the amounts, and what changes. */
const instead = async (
  named: string | undefined,
  doctor: string | undefined,
  call: Call,
): Promise<ExitCode> => {
  const { io, json, say } = call;
  if (named === undefined) return fail(io, 2, message('shelf.name-needed', { action: 'instead' }));
  if (doctor === undefined || !isDoctor(doctor)) {
    const near = doctor === undefined ? null : nearest(doctor, doctors);
    return fail(
      io,
      2,
      message('shelf.unknown-doctor', { found: doctor ?? '', nearest: near, allowed: doctors }),
    );
  }
  const found = await findRecipe(named, io);
  if ('problem' in found) return fail(io, found.wrongUse ? 2 : 1, found.problem);
  const parsed = parseRecipe(found.text, found.name);
  if ('problems' in parsed) return failFile(io, parsed.problems);
  const { recipe, changes } = substituteDoctor(parsed.recipe, doctor);
  io.out(json ? asJson({ recipe, changes: noteTexts(changes, say) }) : sheet(recipe, changes, say));
  return 0;
};

type Checked = {
  readonly problems: readonly Parameters<typeof failFile>[1][number][];
  readonly notes: readonly Message[];
  readonly fine: Message | null;
};

const checked = (text: string, file: string): Checked => {
  const parsed = parseRecipe(text, file);
  if ('recipe' in parsed)
    return {
      problems: [],
      notes: [...parsed.notes, ...recipeNotes(parsed.recipe)],
      fine: message('shelf.fine', { file, name: parsed.recipe.name }),
    };
  if (parsed.problems[0]?.message.id !== 'recipe.kitchen-file')
    return { problems: parsed.problems, notes: [], fine: null };
  const kitchen = parseKitchen(text, file);
  return 'kitchen' in kitchen
    ? { problems: [], notes: [], fine: message('shelf.kitchen-fine', { file }) }
    : { problems: kitchen.problems, notes: [], fine: null };
};

const check = async (path: string | undefined, { io, json, say }: Call): Promise<ExitCode> => {
  if (path === undefined) return fail(io, 2, message('shelf.file-needed'));
  const read = await io.readFile(path);
  if ('problem' in read) return fail(io, 1, read.problem);
  const { problems, notes, fine } = checked(read.text, path);
  if (json) {
    const found = problems.map(({ line, field, message: said }) => ({
      line,
      field,
      id: said.id,
      text: say(said),
    }));
    io.out(asJson({ file: path, valid: fine !== null, problems: found, notes: noteTexts(notes, say) }));
    return fine === null ? 1 : 0;
  }
  if (fine === null) return failFile(io, problems);
  io.out(lines(say(fine), ...notes.map((note) => `- ${say(note)}`)));
  return 0;
};

const sourcesOf = ({ source }: Item): readonly string[] => [
  ...new Set([
    source.composition,
    source.density,
    ...(source.allergens === undefined ? [] : [source.allergens]),
  ]),
];

const listItems = ({ io, json, say }: Call): ExitCode => {
  if (json) {
    io.out(asJson({ items }));
    return 0;
  }
  for (const item of items) {
    const { id, name, roles, composition, de, densityKilogramPerLitre: density, allergens } = item;
    io.out(
      lines(
        say(message('shelf.item', { id, name, roles, composition, de, density, allergens })),
        ...sourcesOf(item).map((source) => say(message('shelf.source', { source }))),
      ),
    );
  }
  return 0;
};

/** What can be done with recipes, and how many words it takes. */
const actions = {
  list: { takes: 0, run: (_, call) => list(call) },
  show: { takes: 1, run: ([name], call) => show(name, call) },
  check: { takes: 1, run: ([file], call) => check(file, call) },
  instead: { takes: 2, run: ([name, doctor], call) => instead(name, doctor, call) },
  items: { takes: 0, run: (_, call) => listItems(call) },
} satisfies Readonly<
  Record<
    string,
    { takes: number; run: (words: readonly string[], call: Call) => Promise<ExitCode> | ExitCode }
  >
>;
const isAction = (typed: string): typed is keyof typeof actions => Object.hasOwn(actions, typed);

/**
 * `kettlehand recipes [list] | show NAME | check FILE | instead NAME DOCTOR | items`. `words` is what stands after `recipes`. Data on
 * standard output, sentences for people on standard error.
 */
export const recipes = async (
  typed: readonly string[],
  options: RecipesOptions,
  io: RecipesIo,
): Promise<ExitCode> => {
  const print = options.printer ?? plainIn(io);
  const call: Call = { io, json: options.json === true, say: (said) => words(said, print) };
  const [action = 'list', ...rest] = typed;
  if (isAction(action)) {
    const { takes, run } = actions[action];
    const extra = rest[takes];
    if (extra !== undefined)
      return fail(io, 2, message('command.too-many', { found: extra, command: `recipes ${action}` }));
    return run(rest, call);
  }
  return fail(
    io,
    2,
    message('shelf.unknown-action', {
      found: action.slice(0, 40),
      nearest: nearest(action, Object.keys(actions)),
    }),
  );
};
