import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  blocks,
  contrastMarkdown,
  eyes,
  leastContrast,
  looks,
  pairOf,
  seenContrast,
  sixteens,
} from '../../scripts/contrast.js';
import { inPalette } from '../../scripts/screens/xterm.js';
import { backgroundIn, depthOf, type Paints, paintsFor } from '../../source/screen/palette.js';
import { pensFor } from '../../source/screen/pens.js';

/** WCAG 2.2 (2023), success criteria 1.4.3 (text) and 1.4.11 (what has to be told apart). */
const wcag = { text: 4.5, largeText: 3, apart: 3 } as const;

const seeing = Object.entries(eyes);

/** The same colours as a terminal with 256 has them: the nearest. */
const in256 = (paints: Paints): Paints =>
  Object.fromEntries(
    looks.map((look) => {
      const { on } = pensFor(paints, 8)[look];
      const shown = (layer: 3 | 4): string | undefined => {
        const index = new RegExp(`\\[${layer}8;5;(\\d+)m`).exec(on)?.[1];
        return index === undefined ? undefined : (inPalette(Number(index)) ?? undefined);
      };
      return [look, { ...paints[look], color: shown(3), backgroundColor: shown(4) }];
    }),
  ) as Paints;

describe('colours', () => {
  it.each(
    (['dark', 'light'] as const).flatMap((background) =>
      seeing.map(([name, eye]) => ({ background, name, eye })),
    ),
  )('can be read on $background terminals, $name', ({ background, eye }) => {
    for (const look of looks)
      for (const known of [background, 'unknown'] as const)
        for (const paints of [paintsFor('many', known), in256(paintsFor('many', known))])
          expect(
            leastContrast(paints, look, background, eye),
            `${look}, ${known}, ${paints[look].color}`,
          ).toBeGreaterThanOrEqual(wcag.text);
  });

  it.each(seeing)('of the two kinds of block differ in brightness, %s', (_, eye) => {
    for (const paints of [paintsFor('many', 'unknown'), in256(paintsFor('many', 'unknown'))]) {
      const alarm = paints['alarm block'].backgroundColor ?? '';
      const caution = paints['caution block'].backgroundColor ?? '';
      expect(seenContrast([alarm, caution], eye)).toBeGreaterThanOrEqual(wcag.apart);
    }
  });

  it.each(Object.entries(sixteens))('of the sixteen that %s has can be read in blocks', (_, palette) => {
    for (const look of blocks) {
      const { color, backgroundColor } = paintsFor('sixteen', 'dark')[look];
      const pair = [palette[color as 'black'], palette[backgroundColor as 'red']] as const;
      expect(
        seenContrast(pair, (colour) => colour),
        look,
      ).toBeGreaterThanOrEqual(wcag.largeText);
    }
  });

  it('are none where there is none, and weight is left', () => {
    const paints = paintsFor('none', 'light');
    for (const look of looks) expect(pairOf(paints[look], { behind: '#fff', text: '#000' })).toBeNull();
    expect(paints['alarm block']).toEqual({ bold: true, inverse: true });
    expect(paints.strong).toEqual({ bold: true });
  });

  it('are chosen by what the terminal tells of itself', () => {
    expect([1, 4, 8, 24].map(depthOf)).toEqual(['none', 'sixteen', 'many', 'many']);
    expect(
      ['15;0', '0;15', '0;default;15', '12;8', '0;7', 'default', '', '0;200'].map((told) =>
        backgroundIn({ COLORFGBG: told }),
      ),
    ).toEqual(['dark', 'light', 'light', 'dark', 'light', 'unknown', 'unknown', 'unknown']);
    expect(backgroundIn({})).toBe('unknown');
  });

  it('have the contrasts that the documentation gives', () => {
    expect(readFileSync('docs/LEGIBILITY.md', 'utf8')).toContain(contrastMarkdown());
  });
});
