import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as cook } from '../../source/commands/cook.js';
import { run as cooks } from '../../source/commands/cooks-command.js';
import { run as debrief } from '../../source/commands/debrief-command.js';
import { run as follow } from '../../source/commands/follow.js';
import { run as handout } from '../../source/commands/handout-command.js';
import { run as kitchen } from '../../source/commands/kitchen-command.js';
import { run as labels } from '../../source/commands/labels-command.js';
import { run as plan } from '../../source/commands/plan-command.js';
import { run as recipes } from '../../source/commands/recipes-command.js';
import { run as rehearse } from '../../source/commands/rehearse.js';
import { run as syrup } from '../../source/commands/syrup-command.js';
import { run as watch } from '../../source/commands/watch.js';
import { home, ids, journalLines, runIn } from './cooks-home.js';

const commands = {
  cook,
  cooks,
  debrief,
  follow,
  handout,
  kitchen,
  labels,
  plan,
  recipes,
  rehearse,
  syrup,
  watch,
};
type Line = readonly [words: string, code: number, says: string];

const { path } = home();
const file = (name: string, content: string | Buffer): string => {
  const whole = join(path, name);
  writeFileSync(whole, content);
  return whole;
};
const bad = {
  recipe: file('bad.yaml', 'kettlehand: 1\nname: [\n'),
  kitchen: file('bad-kitchen.yaml', 'altitude: much\n'),
  parcel: file('no.kettlehand-cook', '{"a":1}\n'),
  journal: file('shopping.jsonl', 'sugar, syrup\n'),
  lost: file(
    'lost.jsonl',
    Buffer.concat([...journalLines([], ''), Buffer.from('{"seq":1,"t":0\n'.repeat(4))]),
  ),
};
const none = join(path, 'none.yaml');

/** Words are parted at blanks; a blank inside one is written as an underscore. */
const says = async (where: string, line: string): Promise<{ code: number; out: string; err: string }> => {
  const [command = '', ...words] = line.split(' ').map((word) => word.replaceAll('_', ' '));
  return runIn(where, commands[command as keyof typeof commands], ...words);
};

const wrong: readonly Line[] = [
  ['plan', 2, 'Which recipe?'],
  ['plan mint-pull extra', 2, '"extra" is one word too many'],
  ['plan nosuch', 2, 'No recipe is called "nosuch"'],
  ['plan mint-pul', 2, 'Did you mean mint-pull?'],
  [`plan ${bad.recipe}`, 1, 'bad.yaml:3:'],
  [`plan ${none}`, 1, 'could not be read'],
  [`plan mint-pull --kitchen ${bad.kitchen}`, 1, 'The version of the format is missing'],
  [`plan mint-pull --kitchen ${none}`, 1, 'could not be read'],
  ['plan mint-pull --guests x', 2, '--guests needs a whole number'],
  ['plan mint-pull --guests 10 --children x', 2, '--children needs a whole number'],
  ['plan mint-pull --children 5', 2, 'so it needs --guests'],
  ['plan mint-pull --guests 3 --children 9', 2, "9 children among 3 guests can't be"],
  ['plan mint-pull --pieces 2', 1, 'can be planned'],
  ['plan mint-pull --pot 1x', 2, 'is no unit of volume'],
  ['plan mint-pull --batch 99', 2, 'Type for example --batch 1.5'],
  ['plan mint-pull -5', 2, '"-5"'],
  ['plan -5 -6', 2, '"-6" is one word too many'],
  ['plan mint-pull --guests', 2, '--guests'],
  ['plan mint-pull --guests --children', 2, '--guests'],
  ['recipes extra', 2, 'recipes instead NAME SYRUP'],
  ['recipes list extra', 2, '"extra" is one word too many'],
  ['recipes show', 2, 'recipes show NAME'],
  [`recipes show ${bad.recipe}`, 1, 'bad.yaml:3:'],
  ['recipes check', 2, 'Which file?'],
  [`recipes check ${none}`, 1, 'could not be read'],
  [`recipes check ${bad.recipe}`, 1, 'bad.yaml:3:'],
  ['recipes instead', 2, 'recipes instead NAME SYRUP'],
  ['recipes instead mint-pull', 2, 'What instead of the syrup?'],
  ['recipes instead mint-pull hony', 2, 'Did you mean honey?'],
  ['recipes instead nosuch honey', 2, 'No recipe is called "nosuch"'],
  [`recipes instead ${none} honey`, 1, 'could not be read'],
  [`recipes instead ${bad.recipe} honey`, 1, 'bad.yaml:3:'],
  ['handout', 2, 'Which recipe?'],
  ['handout mint-pull x', 2, '"x" is one word too many'],
  ['handout mint-pull --have sugar', 2, "doesn't say what there is at home"],
  ['handout mint-pull --have sugar=mouse', 2, '"mouse" is no amount'],
  [`handout mint-pull --have ${'s'.repeat(300)}=3g`, 2, "doesn't say what there is at home"],
  ['handout mint-pull --have butter=2tbsp', 2, '"butter" doesn\'t go into this recipe'],
  ['handout mint-pull --have cream-of-tartar=1l', 1, 'can be planned'],
  ['handout mint-pull --pieces 20 --pot 2l', 2, '--pieces and --pot each say how much to make'],
  ['handout mint-pull --batch 2 --have sugar=300g', 2, '--batch and --have each say how much to make'],
  ['handout mint-pull --have sugar=3g', 1, 'can be planned'],
  ['labels', 2, 'Name a recipe'],
  ['labels mint-pull x', 2, '"x" is one word too many'],
  [`labels mint-pull --cook ${ids.whole}`, 2, 'not both'],
  ['labels --cook nosuch', 2, 'There is no cook "nosuch"'],
  [`labels --cook ${none}`, 1, 'could not be read'],
  ['labels nosuch', 2, 'No recipe is called "nosuch"'],
  [`labels ${none}`, 1, 'could not be read'],
  [`labels ${bad.recipe}`, 1, 'bad.yaml:3:'],
  ['labels mint-pull --pieces x', 2, '--pieces needs a whole number'],
  ['labels mint-pull --date x', 2, 'Type year-month-day'],
  [`labels mint-pull --kitchen ${bad.kitchen}`, 1, 'The version of the format is missing'],
  [`labels mint-pull --kitchen ${none}`, 1, 'could not be read'],
  ['debrief a b', 2, '"b" is one word too many'],
  ['debrief nosuch', 2, 'There is no cook "nosuch"'],
  ['debrief 2026-12', 2, ids.half],
  [`debrief ${bad.parcel}`, 1, 'no.kettlehand-cook'],
  [`debrief ${bad.journal}`, 1, 'shopping.jsonl'],
  [`debrief ${bad.lost}`, 1, 'lost.jsonl'],
  ['cooks extra', 2, 'nothing that can be done with cooks'],
  ['cooks list extra', 2, '"extra" is one word too many'],
  ['cooks compare x', 2, 'wants two to 4 cooks'],
  ['cooks compare a b', 2, 'There is no cook "a"'],
  [`cooks compare ${ids.whole} ${bad.lost}`, 1, 'lost.jsonl'],
  ['cooks export', 2, 'wants the id of a cook'],
  ['cooks export a b', 2, '"b" is one word too many'],
  ['cooks export nosuch', 2, 'There is no cook "nosuch"'],
  [`cooks export ${bad.lost}`, 1, 'lost.jsonl'],
  ['cooks import', 2, 'wants the file of an exported cook'],
  [`cooks import ${none}`, 1, 'could not be read'],
  [`cooks import ${bad.parcel}`, 1, 'Nothing was written'],
  ['cooks delete', 2, 'wants the id of a cook'],
  ['cooks delete nosuch', 2, 'There is no cook "nosuch"'],
  ['cooks --since x', 2, 'Type it as year, month and day'],
  ['kitchen foo', 2, '"kitchen foo" is nothing to do'],
  ['kitchen set', 2, 'Write a setting and its value'],
  ['kitchen set altitude', 2, 'Write a setting and its value'],
  ['kitchen set altitude x', 2, '"x" is no altitude'],
  ['kitchen set altitud 3m', 2, 'Did you mean altitude?'],
  ['syrup x', 2, '"x" is one word too many'],
  ['syrup', 2, 'A syrup needs something in it'],
  ['syrup --item foo=3g', 2, '"foo" is not in the ingredient table'],
  ['syrup --item honey', 2, 'is no item with an amount'],
  [`syrup --item ${'s'.repeat(300)}=3g`, 2, 'is no item with an amount'],
  ['syrup --item glucose-syrup:x=3g', 2, 'glucose-syrup'],
  ['syrup --item granulated-sugar=99kg', 2, 'at most 20 kg'],
  ['syrup --item peppermint-oil=2l', 1, 'Nothing in this syrup is dissolved'],
  ['syrup --item granulated-sugar=2drops', 2, 'granulated-sugar'],
  ['syrup --item honey=3pieces', 2, 'honey'],
  ['syrup --item honey=20g --celsius x', 2, '"x" is no temperature'],
  ['syrup --item honey=20g --celsius 999', 1, 'outside what is known here'],
  ['syrup --item honey=20g --solids 9', 2, 'Type a number between 0 and 1'],
  ['cook', 2, 'needs a terminal to type in'],
  ['cook mint-pull extra', 2, '"extra" is one word too many'],
  ['cook --at 25:00', 2, '"25:00" is no time of day'],
  ['cook mint-pull --feed', 2, 'wants the path of a file or a named pipe'],
  ['rehearse --pace 0', 2, '"0" is not a pace'],
  ['rehearse --seed x', 2, '"x" is not a seed'],
  ['rehearse --surprise foam', 2, 'Did you mean "--surprise foam-over"?'],
  ['rehearse nosuch', 2, 'No recipe is called "nosuch"'],
  ['rehearse --headless', 2, 'add --auto'],
  ['rehearse mint-pull extra', 2, '"extra" is one word too many'],
  ['watch a b', 2, '"b" is one word too many'],
  ['watch nosuch', 2, 'There is no cook "nosuch"'],
  [`watch ${ids.whole}`, 1, 'That cook is over'],
  [`watch ${bad.lost}`, 1, 'lost.jsonl'],
  ['follow', 2, 'Which recipe?'],
  ['follow nosuch', 2, 'No recipe is called "nosuch"'],
  ['follow mint-pull x', 2, '"x" is one word too many'],
  ['follow mint-pull --from nowhere', 2, '"nowhere" is not a phase'],
  [`follow mint-pull --journal ${bad.journal}`, 1, 'shopping.jsonl'],
];

/** Where the kitchen's own file cannot be used: no number here would be right. */
const damaged = home().path;
writeFileSync(join(damaged, 'kitchen.yaml'), 'altitude: much\n');
const withoutKitchen: readonly Line[] = [
  ['plan mint-pull', 1, 'kitchen.yaml:1'],
  ['labels mint-pull', 1, 'kitchen.yaml:1'],
  ['kitchen', 1, 'kitchen.yaml:1'],
  ['kitchen set altitude 300m', 1, 'kitchen.yaml:1'],
  ['follow mint-pull', 1, 'kitchen.yaml:1'],
  ['rehearse mint-pull --auto --headless', 1, 'kitchen.yaml:1'],
];

/** Where it cannot even be read. */
const unreadable = home().path;
mkdirSync(join(unreadable, 'kitchen.yaml'));
const withFolderForKitchen: readonly Line[] = [
  ['plan mint-pull', 1, 'kitchen.yaml'],
  ['labels mint-pull', 1, 'kitchen.yaml'],
  ['kitchen', 1, 'kitchen.yaml'],
];

const here: readonly (readonly [string, readonly Line[]])[] = [
  [path, wrong],
  [damaged, withoutKitchen],
  [unreadable, withFolderForKitchen],
];

describe('what was typed wrong is answered by one sentence that says what it was and what to type', () => {
  it.each(here.flatMap(([where, lines]) => lines.map((line) => [...line, where] as const)))(
    '%s',
    async (line, code, sentence, where) => {
      const said = await says(where, line);
      expect(said.err).toContain(sentence);
      expect(said).toMatchObject({ code, out: '' });
      expect(said.err).not.toMatch(/\n\s+at |undefined|NaN|\[object/);
    },
  );

  it('also where the folder of the cooks is a link to nowhere', async () => {
    const lonely = join(path, 'lonely');
    mkdirSync(lonely);
    symlinkSync(join(path, 'nowhere'), join(lonely, 'cooks'));
    expect(await says(lonely, 'debrief')).toMatchObject({ code: 1, out: '' });
    const watched = await says(lonely, 'watch --once');
    expect(watched).toMatchObject({ code: 1, out: '' });
    expect(watched.err).toContain('No cook is running.');
  });
});
