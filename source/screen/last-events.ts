import type { Cook } from '../cook/cook.js';
import type { Happened } from '../cook/event.js';
import { type Message, message, type TextId } from '../texts/message.js';

/** Something that happened, for the small line at the bottom. `t`: seconds since the opening. */
export type PastEvent = { readonly t: number; readonly said: Message };

const word = (typed: string): Message => message('event.word', { word: typed });

/** How each kind of event is said in two or three words; null: not worth a place. */
const saidOf = (event: Happened): Message | null => {
  switch (event.kind) {
    case 'reading':
      if (event.of === 'syrup') return message('event.reading', event);
      return event.of === 'middle' ? message('event.middle', event) : message('event.check', event);
    case 'done':
      // A step has no short name; its shout is one.
      return event.step.startsWith('trouble.') ? word('done') : { id: `${event.step}.shout` as TextId };
    case 'cold water':
      return word(event.outcome);
    case 'answer':
      return word(event.answer);
    case 'heat':
      return word(`heat ${event.setting}`);
    case 'pot':
      return word(`pot ${event.on ? 'on' : 'off'}`);
    case 'lid':
      return word(`lid ${event.on ? 'on' : 'off'}`);
    case 'trouble':
      return word(`trouble ${event.name}`);
    case 'over':
      return word(`over ${event.name}`);
    case 'rope':
      return word(event.does);
    case 'at':
      return word(`at ${event.phase}`);
    case 'undo':
    case 'stop':
    case 'arms out':
      return word(event.kind);
    case 'room':
      return message('event.room');
    case 'weigh':
      return message('event.weigh', event);
    case 'count':
      return word(`count ${event.pieces}`);
    case 'water':
      return message('event.water', event);
    case 'hands':
      return word(`hands ${event.whose}`);
    case 'portions':
      return word(`portions ${event.count}`);
    case 'no thermometer':
      return word('thermometer none');
    case 'note':
    case 'mark':
    case 'ok':
      return word(event.kind);
    default:
      return null;
  }
};

const mostShown = 8;
/** Back so far, readings of a feed not counted but for the newest: they would push out what people did. */
const mostWalked = 60;
const mostLookedAt = 1000;

const isFed = (event: Happened): boolean => event.kind === 'reading' && event.by === 'feed';

const walkedBack = ({ log, length }: Pick<Cook, 'log' | 'length'>): readonly Happened[] => {
  const walked: Happened[] = [];
  let hasFed = false;
  // Asked with every frame: it ends as soon as there are enough.
  for (const event of log.slice(Math.max(0, length - mostLookedAt), length).reverse()) {
    if (walked.length === mostWalked) break;
    if (isFed(event) && hasFed) continue;
    hasFed ||= isFed(event);
    walked.push(event);
  }
  return walked;
};

/** The latest events that still count, newest first. */
export const lastEvents = (cook: Pick<Cook, 'log' | 'length'>): readonly PastEvent[] => {
  const recent = walkedBack(cook);
  const voided = new Set(recent.flatMap((event) => (event.kind === 'undo' ? [event.voids] : [])));
  return recent
    .flatMap((event) => {
      const said = voided.has(event.seq) ? null : saidOf(event);
      return said === null ? [] : [{ t: event.t, said }];
    })
    .slice(0, mostShown);
};
