import type { Batch } from '../batch/batch.js';
import { type Message, message, type TextId, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { type HandoutBlock, type HandoutSection, handoutOf } from './handout-document.js';

/** Characters that Markdown would take for its own, and those of HTML. */
const special = /[\\`*_[\]<>#|~&]/g;
const plain = (text: string): string => text.replace(special, (character) => `\\${character}`);

type Say = (said: Message) => string;

const blankLines = 5;

const linesOf = (block: HandoutBlock, say: Say): readonly string[] => {
  switch (block.kind) {
    case 'text':
      return [say(block.said)];
    case 'list':
      return block.items.map((item) => `- ${say(item)}`);
    case 'steps':
      return block.items.map((item, index) => `${index + 1}. ${say(item)}`);
    case 'table': {
      const line = (row: readonly string[]): string => `| ${row.join(' | ')} |`;
      return [
        line(block.columns.map(say)),
        line(block.columns.map(() => '---')),
        ...block.rows.map((row, place) =>
          line(row.map((cell) => (place === block.marked ? `**${say(cell)}**` : say(cell)))),
        ),
      ];
    }
    case 'words':
      return block.phases.flatMap(({ phase, lines }) =>
        lines.map((line) => `- *${say(message(`phase.${phase}` as TextId))}:* ${say(line)}`),
      );
    case 'box':
      return [say(block.said), ...Array.from({ length: blankLines }, () => `\n${'\\_'.repeat(40)}`)];
  }
};

const sectionLines = ({ heading, blocks, warns }: HandoutSection, say: Say): readonly string[] => [
  '',
  `## ${warns ? '(!) ' : ''}${say(heading)}`,
  ...blocks.flatMap((block) => ['', ...linesOf(block, say)]),
];

/** The page for the audience as Markdown. */
export const handoutMarkdown = (batch: Batch, printer: Printer): string => {
  const say: Say = (said) => plain(words(said, printer));
  const { title, about, lead, sections, foot } = handoutOf(batch);
  return [
    `# ${say(title)}`,
    ...(about === null ? [] : ['', `*${say(about)}*`]),
    ...lead.flatMap((one) => ['', `**${say(one)}**`]),
    ...sections.flatMap((one) => sectionLines(one, say)),
    '',
    '---',
    ...foot.map(say),
    '',
  ].join('\n');
};
