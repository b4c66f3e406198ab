import { escapeForTerminal } from '../../units/escape.js';
import type { learnedTexts, Told } from '../en/learned.js';
import type { Translated } from '../texts.js';
import { heatWord } from './words.js';

const told = ({ cooks, date, by }: Told): string => {
  if (by === 'person') return date === null ? 'von dir gesagt' : `von dir gesagt am ${date}`;
  return `aus ${cooks === 1 ? '1 Kochgang' : `${cooks} Kochgängen`}${date === null ? '' : `, zuletzt am ${date}`}`;
};

const phaseWords = {
  fold: 'Abkühlen und Falten',
  pull: 'Eine Portion ziehen',
  cut: 'Strang und Schnitt von 100 Stück',
} as const;

/** What a kitchen has learned, as `kettlehand kitchen` and plans say it. */
export const deLearned = {
  'learned.value': ({ found, example }) =>
    `"${escapeForTerminal(found)}" kann hier nicht gemeint sein. Schreib zum Beispiel ${example}, oder none, um es zu vergessen.`,
  'learned.no-knob-label': ({ found, allowed }) =>
    `"${escapeForTerminal(found)}" ist keine Stufe dieses Knopfs: ${allowed.map(escapeForTerminal).join(', ')}. Schreib zum Beispiel learned.watts.${escapeForTerminal(allowed[0] ?? 'low')} "600 W".`,
  'learned.none':
    'Gelernt: noch nichts. Jeder fertige Kochgang (kein Probelauf) lehrt Thermometer, Herd, Nachhitze, Verluste und Minuten.',
  'learned.thermometer': (v, p) =>
    `Gelernt über ${escapeForTerminal(v.id)}: es zeigt ${
      Math.abs(v.value) < 0.25
        ? 'richtig'
        : `${p.rise(Math.abs(v.value))} zu ${v.value > 0 ? 'viel' : 'wenig'}`
    } bei Bonbonhitze, bis auf ${p.rise(2 * v.sd)} (${told(v)}). Mit der letzten Prüfung verrechnet.`,
  'learned.watts': (v) =>
    `Gelernt über Hitze ${escapeForTerminal(heatWord(v.label))}: etwa ${Math.round(v.value / 10) * 10} W in den Topf, bis auf ${Math.round(200 * v.sd)} % (${told(v)}).`,
  'learned.carry-over': (v, p) =>
    `Gelernt über Nachhitze: neben dem Herd steigt es ${v.value <= 0 ? 'nicht weiter' : `noch ${p.rise(v.value)}`}, bis auf ${p.rise(2 * v.sd)} (${told(v)}).`,
  'learned.losses': (v, p) =>
    `Gelernt über Verluste: ${p.percent(1 - v.value)} bleiben an Topf, Tisch und Händen, bis auf ${Math.round(200 * v.sd)} % des Ansatzes (${told(v)}).`,
  'learned.minutes': (v, p) =>
    `Gelernt über diese Mannschaft: ${phaseWords[v.phase]} dauert ${p.time(v.value * 60)} (${told(v)}).`,
  'learned.plan': ({ cooks, date }) =>
    `Gerechnet mit dem, was ${cooks > 0 ? `${cooks === 1 ? '1 Kochgang' : `${cooks} Kochgänge`} in dieser Küche ${cooks === 1 ? 'zeigte' : 'zeigten'}` : 'du über diese Küche sagtest'}${date === null ? '' : ` (bis ${date})`}. Ansehen und ändern: kettlehand kitchen.`,
} as const satisfies Translated<typeof learnedTexts>;
