import { describe, expect, it } from 'vitest';
import { batchOf } from '../../source/batch/batch-of.js';
import { runPlanOf } from '../../source/batch/run-sheet-plan.js';
import { defaultKitchen } from '../../source/kitchen/default.js';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { planExplain, planText } from '../../source/sheets/plan.js';
import { message, words } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';
import { recipe, recipeNames } from '../cook/play.js';
import { hall, hillHall } from './samples.js';

const print = printer({ unit: 'C', toShownCelsius: (celsius) => celsius });
const inRoom = (celsius: number, humidity: number | null) => ({ ...hall, room: { celsius, humidity } });

describe('an unheated hall in winter', () => {
  it('is planned at every room temperature that a kitchen file may have', () => {
    for (const celsius of [-20, -5, -0.1, 0, 17, 50]) {
      const text = `kettlehand-kitchen: 1\nroom: { temperature: ${celsius} c, humidity: 60 % }\n`;
      const parsed = parseKitchen(text, 'cold.yaml');
      expect(parsed, String(celsius)).toHaveProperty('kitchen');
      if (!('kitchen' in parsed)) continue;
      for (const name of recipeNames) {
        const batch = batchOf(recipe(name), parsed.kitchen);
        const said = planText(batch, print) + planExplain(batch, print);
        expect(said, name).not.toMatch(/NaN|undefined|Infinity/);
        for (const { at } of runPlanOf(batch, 2).moments) expect(Number.isFinite(at), name).toBe(true);
      }
    }
  });

  it('says what is assumed and what the frost does, and says nothing of it in a warm room', () => {
    const ids = (celsius: number) => batchOf(hillHall, inRoom(celsius, 0.6)).notes.map(({ id }) => id);
    expect(ids(-5)).toContain('plan.note.frost');
    expect(ids(0)).not.toContain('plan.note.frost');
    expect(batchOf(hillHall, defaultKitchen).notes.map(({ id }) => id)).not.toContain('plan.note.frost');
    const said = words(message('plan.note.frost', { celsius: -5, known: true }), print);
    expect(said).toContain('-5 °C');
    expect(said).toContain('reckoned for 0 °C');
  });

  it('never promises a piece to stay dry for longer than the air at 0 degrees allows', () => {
    const sticky = (celsius: number) => batchOf(hillHall, inRoom(celsius, 0.8)).room?.stickySeconds;
    expect(sticky(-5)).not.toBeNull();
    expect(sticky(-5)?.[0]).toBeLessThanOrEqual((sticky(1)?.[0] ?? 0) * 1.1);
  });
});
