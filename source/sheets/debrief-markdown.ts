import type { Story } from '../lessons/story.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { type DebriefTable, debriefDocument } from './debrief-document.js';
import { textPlot } from './debrief-text-plot.js';

/** Characters that Markdown would take for its own, and those of HTML. */
const special = /[\\`*_[\]<>#|~&]/g;
const plain = (text: string): string => text.replace(special, (character) => `\\${character}`);

const tableOf = (
  { columns, rows, right, foot, whenEmpty }: DebriefTable,
  say: (said: Message) => string,
): string[] => {
  if (rows.length === 0 && whenEmpty !== null) return [say(whenEmpty)];
  const line = (row: readonly Message[]): string => `| ${row.map(say).join(' | ')} |`;
  return [
    line(columns),
    `| ${columns.map((_, index) => (right.includes(index) ? '---:' : '---')).join(' | ')} |`,
    ...rows.map(line),
    ...(foot === null ? [] : ['', say(foot)]),
  ];
};

/** The debrief as Markdown with the curve in plain characters. */
export const debriefMarkdown = (story: Story, printer: Printer, damage: readonly Message[] = []): string => {
  const say = (said: Message): string => plain(words(said, printer));
  const sheet = debriefDocument(story, damage, printer.twelveHours);
  const plot = textPlot(story, printer);
  const banner = sheet.rehearsal === null ? [] : [`**${say(sheet.rehearsal)}**`, ''];
  const heading = (said: Message): string[] => ['', `## ${say(said)}`, ''];
  return [
    `# ${say(sheet.title)}`,
    '',
    ...banner,
    sheet.circumstances.map(say).join('; '),
    ...sheet.caveats.flatMap((one) => ['', `> ${say(one)}`]),
    '',
    `**${say(sheet.lead)}**`,
    ...heading(message('debrief.heading.changes')),
    ...(sheet.changes.length === 0
      ? [say(sheet.noChanges)]
      : sheet.changes.map(
          ({ action, because }, index) => `${index + 1}. **${say(action)}** ${say(because)}`,
        )),
    ...heading(message('debrief.heading.curve')),
    ...(plot === null ? [say(message('debrief.no-curve'))] : ['```text', ...plot, '```']),
    ...(sheet.result.length === 0 ? [] : heading(message('debrief.heading.result'))),
    ...sheet.result.map(({ label, value }) => `- **${say(label)}:** ${say(value)}`),
    ...sheet.tables.flatMap((table) => [...heading(table.heading), ...tableOf(table, say)]),
    ...(sheet.remarks.length === 0
      ? []
      : [...heading(message('debrief.heading.remarks')), ...sheet.remarks.map((one) => `- ${say(one)}`)]),
    '',
    ...banner,
    ...sheet.foot.map((one) => `${say(one)}\n`),
  ].join('\n');
};
