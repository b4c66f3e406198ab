import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { World } from '../../source/commands/world.js';
import { troubleNames } from '../../source/cook/event.js';
import { linesBetween } from '../../source/screen/lines.js';
import { de } from '../../source/texts/de.js';
import { en } from '../../source/texts/en.js';
import type { Printer } from '../../source/units/printer.js';
import { blind, hall, Play, recipeNames, seaside } from '../cook/play.js';
import { numbersIn } from './numbers.js';

type Said = { readonly id: string; readonly values: unknown; readonly printer: Printer };
type Sentence = (values: unknown, printer: Printer) => string;

/** Every English sentence made of values, as it was said while the program ran. */
const heard = vi.hoisted(() => new Map<string, Said>());

vi.mock('../../source/texts/languages.js', async (original) => {
  const { bring, textsIn } = await original<typeof import('../../source/texts/languages.js')>();
  await bring('de');
  const listening = new Proxy(textsIn('en'), {
    get: (texts, id) => {
      const text = (texts as Readonly<Record<string | symbol, unknown>>)[id];
      return typeof text !== 'function'
        ? text
        : (values: unknown, print: Printer) => {
            const key = `${String(id)} ${print.unit} ${JSON.stringify(values)}`;
            if (!heard.has(key)) heard.set(key, { id: String(id), values, printer: print });
            return (text as Sentence)(values, print);
          };
    },
  });
  return { bring, textsIn: (language: 'en' | 'de') => (language === 'en' ? listening : textsIn(language)) };
});

const home = mkdtempSync(join(tmpdir(), 'kettlehand-languages-'));
afterAll(() => rmSync(home, { recursive: true }));

type Command = { readonly run: (argv: readonly string[], world: World) => Promise<number> };
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  plan: () => import('../../source/commands/plan-command.js'),
  recipes: () => import('../../source/commands/recipes-command.js'),
  kitchen: () => import('../../source/commands/kitchen-command.js'),
  syrup: () => import('../../source/commands/syrup-command.js'),
  rehearse: () => import('../../source/commands/rehearse.js'),
  follow: () => import('../../source/commands/follow.js'),
  debrief: () => import('../../source/commands/debrief-command.js'),
  cooks: () => import('../../source/commands/cooks-command.js'),
  handout: () => import('../../source/commands/handout-command.js'),
  labels: () => import('../../source/commands/labels-command.js'),
};

const runs = async (language: 'en' | 'de', line: string): Promise<string> => {
  const [command = '', ...argv] = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(
    ([, quoted, word]) => quoted ?? word ?? '',
  );
  const { run } = (await commands[command]?.()) ?? {};
  let said = '';
  const write = (text: string): void => {
    said += text;
  };
  await run?.(argv, {
    language,
    out: write,
    err: write,
    env: { KETTLEHAND_HOME: home },
    stdin: new PassThrough().end() as unknown as NodeJS.ReadStream,
    stdout: process.stdout,
    version: 'test',
  });
  return said;
};

const journalFolder = 'tests/journals/0.1.0';
const journals = readdirSync(journalFolder).map((file) => `${journalFolder}/${file}`);
const hallFile = '--kitchen recipes/kitchens/hill-hall.yaml';
const lines: readonly string[] = [
  ...recipeNames.flatMap((name) => [`plan ${name} --explain ${hallFile}`, `recipes show ${name}`]),
  'plan mint-pull --explain',
  'plan mint-pull --explain --pressure 850hPa --guests 24 --children 10',
  'plan mint-pull --pieces 400 --pot 1l',
  'plan mint-pull --batch nothing',
  'plan mint-pull --altitude 9000m',
  'plan mint-pull --altitude 1450',
  'plan mint-pull --pressure 12parsec',
  'plan no-such-recipe',
  `plan hill-hall-ginger-pull --at "2099-11-28 15:00" --batches 2 ${hallFile}`,
  `plan honey-pull --at "2099-11-28 3pm" --card ${hallFile}`,
  'plan mint-pull --at yesterday',
  'recipes',
  'recipes items',
  'recipes instead hill-hall-ginger-pull honey',
  'recipes instead hill-hall-ginger-pull molasses',
  'recipes instead hill-hall-ginger-pull invert',
  'recipes instead hill-hall-ginger-pull rice',
  'recipes instead hill-hall-ginger-pull potatoes',
  'recipes check package.json',
  `recipes check ${join(home, 'bad.yaml')}`,
  'recipes chekc x',
  'kitchen',
  'kitchen set altitude "1450 m" stove gas room.temperature "19 C" room.humidity "45 %" pot.volume "3 l"',
  'kitchen set colour red',
  'kitchen set altitude "9000 m"',
  'kitchen set learned.carry-over "3 F" learned.watts.low "600 W" learned.fold "12 min" learned.losses "10 %"',
  'kitchen show',
  'syrup --item granulated-sugar=400g --item water=120ml --celsius 121',
  'syrup --item granulated-sugar=400g --celsius 300',
  'syrup --item granulatd-sugar=400g',
  'rehearse --auto --headless --seed 7',
  'rehearse mint-pull --auto --headless --seed 7 --surprise foam-over',
  'rehearse --auto --headless --seed 3 --surprise thermometer-off',
  'rehearse --surprise foem',
  'follow mint-pull --from nowhere',
  ...recipeNames.flatMap((name) => [`handout ${name}`, `labels ${name}`]),
  'handout mint-pull --have 300',
  'labels mint-pull --checked wood',
  'labels mint-pull --net 100t',
  ...journals.flatMap((file) => [`debrief ${file}`, `debrief ${file} --chapters`]),
  `cooks compare ${journals[0]} ${journals[1] ?? journals[0]}`,
  'cooks',
  'cooks compare',
  'cooks delete',
  'cooks delete 2026',
  'cooks import package.json',
  'cooks --since someday',
  'debrief nothing',
];

const mistakes = [
  '',
  'colder',
  'trouble flood',
  'heat warm',
  'at noon',
  'weigh much',
  'count few',
  'middle warm',
  'no',
  'over',
  'room damp',
  'portion many',
  'hands many',
  'ok foam',
];

/** Whole cooks, with everything that can go wrong, in lines. */
const playAll = (): void => {
  for (const recipe of recipeNames)
    for (const kitchen of [hall, seaside, blind]) {
      const play = new Play({ recipe, kitchen });
      let before = null;
      for (let turn = 0; turn < 60 && play.step !== 'over.end'; turn += 1) {
        const { advice } = play;
        linesBetween(before, advice, play.printer, { answered: true });
        before = advice;
        if (turn % 7 === 3) for (const line of mistakes) play.query(line);
        play.forward();
      }
    }
  for (const name of troubleNames)
    for (const from of ['boil', 'pull'] as const) {
      const play = new Play({ from, kitchen: hall }).type(`trouble ${name}`);
      for (let turn = 0; turn < 8; turn += 1) {
        linesBetween(null, play.advice, play.printer);
        play.wait(30).query('done');
      }
    }
  const hot = new Play({ from: 'boil', kitchen: hall }).reads(60, 224, 230, 238, 246, 250, 256);
  linesBetween(null, hot.advice, hot.printer, { answered: true });
  hot.reads(5, 300).reads(60, 262);
  linesBetween(null, hot.advice, hot.printer, { answered: true });
  const slow = new Play({ from: 'boil', kitchen: hall }).reads(60, 230, 238).wait(1200);
  linesBetween(null, slow.advice, slow.printer);
};

/** Sentences whose numbers are those of German habit or law. */
const otherNumbers = new Set(['plan.note.pot', 'hazard.choking.1']);
/** Their values are sentences or words said before, or what a source or a person wrote. */
const carriesWords =
  /^(lines\.|shelf\.(source|title)|run\.say|handout\.own|debrief\.remark|debrief\.warning|compare\.text|rehearsal\.(phase|warning|change\.late))/;
/** Names of works and units alone: what is the same in both. */
const mayBeSame =
  /^(yaml\.place|event\.(reading|weigh)|plan\.(title|card|dial)|card\.(title|date|number|from|off)|run\.at|screen\.clock|shelf\.title|choose\.|watch\.stage\.word|plan\.written|ingredient)/;

describe('both languages say the same of the same values', () => {
  beforeAll(async () => {
    writeFileSync(
      join(home, 'bad.yaml'),
      'kettlehand: 1\nname: x\ningredients:\n  - { item: suger, amount: much }\n  - { item: water, amount: 900 kg }\ntarget: { celsius: [250, 260], feels: hard bal }\ncolour: red\n',
    );
    playAll();
    for (const line of lines) await runs('en', line);
  }, 240_000);

  const german = de as Readonly<Record<string, unknown>>;
  const english = en as Readonly<Record<string, unknown>>;
  const eachHeard = (check: (one: string, other: string, said: Said) => void): void => {
    for (const said of heard.values()) {
      const [one, other] = [english[said.id], german[said.id]];
      if (typeof one !== 'function' || typeof other !== 'function') continue;
      const inGerman = said.printer.inLanguage('de');
      check((one as Sentence)(said.values, said.printer), (other as Sentence)(said.values, inGerman), said);
    }
  };

  it('hears enough of them', () => {
    const ids = new Set([...heard.values()].map(({ id }) => id).filter((id) => id in german));
    expect(ids.size).toBeGreaterThan(150);
  });

  it('in German, without a hole in it', () => {
    eachHeard((_, other, { id }) => {
      expect(other, id).not.toMatch(/undefined|NaN|\[object|\bnull\b/);
      if (!carriesWords.test(id)) expect(other, id).not.toMatch(/\b(the|and|with|your|into|until)\b/);
    });
  });

  it('with the same numbers', () => {
    eachHeard((one, other, { id }) => {
      if (otherNumbers.has(id)) return;
      expect(numbersIn(other, 'de'), `${id}\n${one}\n${other}`).toEqual(numbersIn(one, 'en'));
    });
  });

  it('and not in English', () => {
    const same = new Set<string>();
    eachHeard((one, other, { id }) => {
      if (one === other && /[a-z]{4}/.test(one) && !mayBeSame.test(id) && !carriesWords.test(id))
        same.add(`${id}: ${one}`);
    });
    expect([...same]).toEqual([]);
  });

  it.each([
    [
      `plan hill-hall-ginger-pull ${hallFile}`,
      /Ziel +\d+-\d+ °F · \d+-\d+ °C, in kaltem Wasser harter Ballen/,
    ],
    ['plan no-such-recipe', /Kein Rezept heißt/],
    ['kitchen show', /Wasser kocht bei/],
    ['syrup --item granulated-sugar=400g --celsius 121', /Trockenmasse/],
    ['recipes items', /Kristallzucker/],
    ['rehearse --auto --headless --seed 7', /PROBELAUF/],
    ['follow mint-pull --from nowhere', /ist keine Phase/],
  ])('the command %s speaks it', async (line, said) => expect(await runs('de', line)).toMatch(said));
});
