import type { FileProblem } from '../../source/recipe/document.js';
import { parseRecipe } from '../../source/recipe/parse.js';
import type { Recipe } from '../../source/recipe/recipe.js';
import { type Message, message, words } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';

const plain = printer({ unit: 'C', toShownCelsius: (celsius) => celsius });

/** What a person reads. */
export const say = (said: Message): string => words(said, plain);
export const sayProblem = ({ file, line, field, message: said }: FileProblem): string =>
  say(message('yaml.place', { file, line, field })) + say(said);

/** A small good recipe; each test breaks one thing of it. */
export const good = `kettlehand: 1
name: Plain pull
ingredients:
  - { item: granulated-sugar, amount: 400 g }
  - { item: glucose-syrup, de: 42, amount: 200 g }
  - { item: water, amount: 120 ml }
target: { celsius: [126, 129], feels: hard ball }
`;

export const problemsOf = (text: string): readonly string[] => {
  const parsed = parseRecipe(text, 'pull.yaml');
  return 'problems' in parsed ? parsed.problems.map(sayProblem) : [];
};

export const recipeOf = (text: string): Recipe => {
  const parsed = parseRecipe(text, 'pull.yaml');
  if ('problems' in parsed) throw new Error(parsed.problems.map(sayProblem).join('\n'));
  return parsed.recipe;
};

/** The good recipe with one text in the place of another. */
export const broken = (find: string, replace: string): string => {
  if (!good.includes(find)) throw new Error(`"${find}" is not in the good recipe`);
  return good.replace(find, replace);
};
