import { describe, expect, it } from 'vitest';
import { batchOf } from '../../source/batch/batch-of.js';
import { plainPrinter } from '../../source/commands/io.js';
import { defaultKitchen } from '../../source/kitchen/default.js';
import { scaleRecipe } from '../../source/recipe/scale.js';
import { type HandoutBlock, handoutOf } from '../../source/sheets/handout-document.js';
import { handoutHtml } from '../../source/sheets/handout-html.js';
import { handoutMarkdown } from '../../source/sheets/handout-markdown.js';
import { type Message, words } from '../../source/texts/message.js';
import { type RecipeName, recipe, recipeNames } from '../cook/play.js';
import { fleschKincaidGrade, syllablesIn } from './reading-level.js';

const batch = (name: RecipeName, factor = 1) => batchOf(scaleRecipe(recipe(name), factor), defaultKitchen);
const markdown = (name: RecipeName, factor = 1) => handoutMarkdown(batch(name, factor), plainPrinter);

/** Sentences of ours that run as text; what the presenter wrote and cells of tables are not. */
const running = (block: HandoutBlock): readonly Message[] =>
  block.kind === 'text' ? [block.said] : block.kind === 'list' || block.kind === 'steps' ? block.items : [];
const sentences = (name: RecipeName) => {
  const { lead, sections } = handoutOf(batch(name));
  return [...lead, ...sections.flatMap(({ blocks }) => blocks.flatMap(running))].map((said) =>
    words(said, plainPrinter),
  );
};

describe('the reading level', () => {
  it.each([
    ['syrup', 2],
    ['candy', 2],
    ['take', 1],
    ['bubbles', 2],
    ['thermometer', 4],
    ['20', 2],
    ['turned', 1],
    ['starch', 1],
  ])('counts the syllables of %s as %i', (word, count) => expect(syllablesIn(word)).toBe(count));

  it('puts easy and hard prose where it belongs', () => {
    expect(fleschKincaidGrade(['The cat sat on the mat. It was warm.'])).toBeLessThan(2);
    expect(
      fleschKincaidGrade([
        'Notwithstanding considerable meteorological uncertainty, confectionery manufacturers habitually recommend precautionary refrigeration of hygroscopic preparations.',
      ]),
    ).toBeGreaterThan(15);
  });

  it.each(recipeNames)('fits a reader of twelve: %s', (name) =>
    expect(fleschKincaidGrade(sentences(name))).toBeLessThanOrEqual(6),
  );

  it('has no single sentence that a reader of twelve would stumble over', () => {
    const long = sentences('hill-hall-ginger-pull').filter((said) => fleschKincaidGrade([said]) > 9.5);
    expect(long).toEqual([]);
  });
});

describe('the page for the audience', () => {
  const page = markdown('hill-hall-ginger-pull');

  it('has amounts in both systems', () => {
    expect(page).toContain('| granulated sugar | 500 g | 17 3/4 oz or 2 1/2 cups | at the start |');
    expect(page).toContain('| ginger oil | 20 drops | 20 drops | off the heat |');
    expect(page).toMatch(/123-126 °C \(253-259 °F\)/);
  });

  it('tells how to shift the target for a hill or a bad thermometer', () => {
    expect(page).toContain('Does it show 4 degrees less? Then stop 4 degrees sooner.');
  });

  it('marks the stage of this recipe and gives the published numbers', () => {
    expect(page).toContain('| **hard ball (you stop here)** | **121-130** | **250-266** |');
    expect(page).toContain('| soft ball | 112-116 | 234-240 |');
  });

  it('says what to do for a burn, with its source', () => {
    expect(page).toContain('cool running water now, for 20 minutes');
    expect(page).toContain('no ice, no butter, no oil and no cream');
    expect(page).toContain('British Burn Association');
  });

  it('carries the deferring line, allergens with what hands bring, storage, cleaning and who shall not eat it', () => {
    expect(page).toContain(
      'The person in charge, local rules for kitchens and for children, food law and trained first aid come before',
    );
    expect(page).toContain('It has this in it: milk.');
    expect(markdown('rice-syrup-pull')).toMatch(/may have this in them: .*barley/);
    expect(page).toContain('two to three weeks');
    expect(page).toContain('hot water from the tap');
    expect(page).toContain('under four');
  });

  it.each([
    [{ contains: [], check: [], unknown: true }, /not known/i],
    [{ contains: [], check: [], unknown: false }, /none of the common|no common/i],
  ])('says what is known of allergens: %o', (allergens, said) => {
    const own = batchOf({ ...recipe('clear-pull'), allergens, about: '', cues: {} }, defaultKitchen);
    for (const form of [handoutMarkdown(own, plainPrinter), handoutHtml(own, plainPrinter)]) {
      expect(form).toMatch(said);
      expect(form).not.toMatch(/has this in it|may have this/);
      // Without the presenter's own words there is still room for notes, and no empty line for them.
      expect(form).toContain('Room for your own notes');
      expect(form).not.toMatch(/\n\*\*\n|<p class="about">|<dl><\/dl>/);
    }
  });

  it("keeps the presenter's own words and leaves room for more", () => {
    expect(page).toContain('- *boil:* Nobody stirs now.');
    expect(page).toContain('Room for your own notes:');
  });

  it('says what this recipe needs: no lid over honey, no scraping of clear syrup', () => {
    expect(markdown('honey-pull')).toContain('Use no lid');
    expect(markdown('clear-pull')).toContain('put the lid on for 2 minutes');
    expect(markdown('clear-pull')).toContain('Do not scrape the pot.');
    expect(page).toContain('Scrape the pot with a spoon.');
    expect(page).toContain('Mix the starch and the dry sugar first');
  });

  it('is scaled to what they have at home', () => {
    expect(markdown('hill-hall-ginger-pull', 0.5)).toContain(
      '| granulated sugar | 250 g | 8 3/4 oz or 1 1/4 cups |',
    );
  });

  it.each(recipeNames)('leaves nothing unsaid or undefined: %s', (name) => {
    for (const text of [markdown(name), handoutHtml(batch(name), plainPrinter)])
      expect(text).not.toMatch(/undefined|NaN|\[object|Infinity/);
  });

  it('is one file: no script, no address, nothing to load, and takes words as words', () => {
    const own = {
      ...recipe('clear-pull'),
      name: '<b>Pull</b> & "co"',
      cues: { boil: ['<script>x</script>'] },
    };
    const html = handoutHtml(batchOf(own, defaultKitchen), plainPrinter);
    expect(html).not.toMatch(/<script|https?:|<link|<img|@import|url\(/);
    expect(html).toContain('&lt;b&gt;Pull&lt;/b&gt; &amp; &quot;co&quot;');
    expect(handoutMarkdown(batchOf(own, defaultKitchen), plainPrinter)).toContain('\\<script\\>');
  });
});
