import { describe, expect, it } from 'vitest';
import { kitchen } from '../../source/commands/kitchen.js';
import { message } from '../../source/texts/message.js';

const counter = (text: string | null = null) => {
  const said = { out: '', err: '', text };
  return {
    said,
    io: {
      out: (part: string) => {
        said.out += part;
      },
      err: (part: string) => {
        said.err += part;
      },
      readKitchen: async () => (said.text === null ? null : { text: said.text }),
      writeKitchen: async (written: string) => {
        said.text = written;
        return null;
      },
      kitchenPath: '/home/ada/kitchen.yaml',
    },
  };
};

describe('kettlehand kitchen', () => {
  it('shows what is taken where nothing is known', async () => {
    const { io, said } = counter();
    expect(await kitchen([], {}, io)).toBe(0);
    expect(said.out.split('\n').slice(0, 4)).toEqual([
      'There is no kitchen file yet; this is what is taken. It will be /home/ada/kitchen.yaml. Begin with: kettlehand kitchen set altitude "1450 m"',
      'Air: 1013 hPa, sea level, for want of anything better. Water boils at 212 °F.',
      'Stove: coil. Knob: low, medium, high.',
      'Pot: not known.',
    ]);
    expect(said.err).toBe('');
  });

  it('sets, saves, says so on standard error and shows the result', async () => {
    const { io, said } = counter();
    const typed = [
      'set',
      'altitude',
      '1450 m',
      'stove',
      'gas',
      'thermometer',
      'dial',
      'thermometer.unit',
      'F',
      'thermometer.ice',
      '33',
      'thermometer.boils',
      '204',
    ];
    expect(await kitchen(typed, {}, io)).toBe(0);
    expect(said.err).toBe('Saved in /home/ada/kitchen.yaml.\n');
    expect(said.out).toContain('Air: 851 hPa, by the altitude (1,450 m). Water boils at 203 °F.');
    expect(said.out).toContain(
      'Thermometer my-dial: dial, corrected by ice and boiling water; shows 258 °F at 257 °F, give or take 6 °F.',
    );
    expect(await kitchen([], {}, io)).toBe(0);
    expect(said.text).toContain('altitude: 1450 m');
  });

  it.each([
    [['set', 'altitud', '1450 m'], 2, '"altitud" is nothing that can be set. Did you mean altitude?'],
    [['set', 'altitude', '1450'], 2, '"1450" has no unit.'],
    [['set', 'altitude'], 2, 'Write a setting and its value'],
    [['sett', 'altitude', '1450 m'], 2, '"kitchen sett" is nothing to do. Did you mean set?'],
  ] as const)('%o: nothing is written, code %d', async (typed, code, sentence) => {
    const { io, said } = counter();
    expect(await kitchen(typed, {}, io)).toBe(code);
    expect(said.err).toContain(sentence);
    expect(said.text).toBeNull();
    expect(said.out).toBe('');
  });

  it('does not touch a file that it can’t read', async () => {
    const { io, said } = counter('kettlehand-kitchen: 1\nstove: wood\n');
    expect(await kitchen(['set', 'altitude', '1450 m'], {}, io)).toBe(1);
    expect(said.err).toBe(
      '/home/ada/kitchen.yaml:2: stove: "wood" is not known here. Write gas, coil, glass-ceramic or induction.\n',
    );
    expect(said.text).toBe('kettlehand-kitchen: 1\nstove: wood\n');
  });

  it('says why it was not saved', async () => {
    const { io, said } = counter();
    const full = {
      ...io,
      writeKitchen: async () => ({
        problem: message('files.notWritten', { path: io.kitchenPath, trouble: 'full', code: 'ENOSPC' }),
      }),
    };
    expect(await kitchen(['set', 'stove', 'gas'], {}, full)).toBe(1);
    expect(said.err).toBe(
      '/home/ada/kitchen.yaml could not be written: the disk is full. Free some space on it.\n',
    );
    expect(said.out).toBe('');
  });

  it('prints its path, and one JSON object', async () => {
    const { io, said } = counter('kettlehand-kitchen: 1\npressure: 850 hPa\n');
    await kitchen(['path'], {}, io);
    expect(said.out).toBe('/home/ada/kitchen.yaml\n');
    said.out = '';
    expect(await kitchen([], { json: true }, io)).toBe(0);
    expect(JSON.parse(said.out)).toMatchObject({
      version: 1,
      file: '/home/ada/kitchen.yaml',
      air: { pressurePascal: 85_000, from: 'pressure' },
      thermometers: [{ basis: 'taken as right', trueCelsius: 125, shownCelsius: 125 }],
      notes: [{ id: 'kitchen.note.unchecked' }],
    });
  });
});
