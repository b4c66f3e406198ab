import { type Item, noAllergens, parts, row } from './item.js';

const usda = (food: string) => `USDA SR27 (2014) ${food}`;
const cakeBible = 'Beranbaum, The Cake Bible (1988), by way of the data file of GNU units';

/**
 * Sugars and doctors. Where the two published masses of a cup differ, the density that NBS Circular C440
 * (1942) table 114 gives for the same solids is used if it lies between them, else their middle.
 */
export const sugarItems: readonly Item[] = [
  row({
    id: 'granulated-sugar',
    name: 'granulated sugar',
    roles: ['sugar'],
    composition: parts({ water: 0.0002, sucrose: 0.9998 }),
    cupGrams: 200,
    clear: true,
    alsoCalled: [
      'sugar',
      'white-sugar',
      'caster-sugar',
      'cane-sugar',
      'beet-sugar',
      'sucrose',
      'table-sugar',
    ],
    source: {
      composition: `${usda('19335')}: water 0.02, carbohydrate 99.98 %`,
      density: `${usda('19335')} 200 g a cup; ${cakeBible}: 200 g`,
    },
  }),
  row({
    id: 'brown-sugar',
    name: 'brown sugar',
    roles: ['sugar'],
    composition: parts({ water: 0.0134, sucrose: 0.9456, invert: 0.0246, salt: 0.0007, other: 0.0157 }),
    cupGrams: 220,
    alsoCalled: ['light-brown-sugar', 'dark-brown-sugar', 'soft-brown-sugar', 'muscovado', 'demerara'],
    source: {
      composition: `${usda('19334')}: water 1.34, sugars 97.02 %, sodium 28 mg; sucrose and invert from memory of the same table`,
      density: `${usda('19334')} 220 g a packed cup; ${cakeBible}: light 217 g, dark 239 g`,
    },
  }),
  row({
    id: 'powdered-sugar',
    name: 'powdered sugar',
    roles: ['sugar'],
    composition: parts({ water: 0.0023, sucrose: 0.9781, other: 0.0196 }),
    cupGrams: 117,
    alsoCalled: ['icing-sugar', 'confectioners-sugar', 'confectioners-sugar-10x'],
    source: {
      composition: `${usda('19336')}: water 0.23, sugars 97.81 %, the rest is starch`,
      density: `between ${usda('19336')} 120 g an unsifted cup and ${cakeBible}: 4 oz (113 g)`,
    },
  }),
  row({
    id: 'corn-syrup',
    name: 'light corn syrup',
    roles: ['doctor'],
    composition: parts({ water: 0.2281, glucoseSolids: 0.7679, salt: 0.0016, fat: 0.002, other: 0.0004 }),
    de: 42,
    densityKilogramPerLitre: 1.39,
    clear: true,
    alsoCalled: ['light-corn-syrup', 'corn-sirup'],
    source: {
      composition: `${usda('19350')}: water 22.81, carbohydrate 76.79, fat 0.20 %, sodium 62 mg; 42 DE: regular acid-converted syrup, common practice, no source for the retail bottle`,
      density: `NBS C440 table 114 at 77 % solids 1.391; ${usda('19350')} 341 g a cup (1.441); ${cakeBible}: 11.5 oz (1.378)`,
    },
  }),
  row({
    id: 'dark-corn-syrup',
    name: 'dark corn syrup',
    roles: ['doctor'],
    composition: parts({ water: 0.2201, glucoseSolids: 0.7759, salt: 0.0039, other: 0.0001 }),
    de: 42,
    cupGrams: 328,
    source: {
      composition: `${usda('19349')}: water 22.01, carbohydrate 77.59 %, sodium 155 mg; all of it counted as 42 DE solids, our judgement`,
      density: `${usda('19349')} 328 g a cup`,
    },
  }),
  row({
    id: 'glucose-syrup',
    name: 'glucose syrup',
    roles: ['doctor'],
    composition: parts({ water: 0.2, glucoseSolids: 0.797, other: 0.003 }),
    de: 42,
    densityKilogramPerLitre: 1.42,
    clear: true,
    allergens: { contains: [], check: ['wheat', 'sulphites'], unknown: false },
    alsoCalled: ['glucose', 'liquid-glucose', 'confectioners-glucose', 'starch-syrup', 'glucose-sirup'],
    source: {
      composition: '43 Baume, 42 DE trade syrup: 19.7-20 % water, from memory',
      density: '43 degrees Baume by its definition, 145 / (145 - 43) = 1.42',
      allergens: 'may be made of wheat, may be bleached with sulphite: common practice, no source',
    },
  }),
  row({
    id: 'rice-syrup',
    name: 'rice syrup',
    roles: ['doctor'],
    composition: parts({ water: 0.21, glucoseSolids: 0.775, other: 0.015 }),
    de: 45,
    densityKilogramPerLitre: 1.4,
    alsoCalled: ['brown-rice-syrup', 'rice-malt-syrup', 'rice-malt'],
    allergens: { contains: [], check: ['barley'], unknown: false },
    source: {
      composition:
        'water 20-22 %, protein and ash, from memory; 45 DE computed from maltotriose 52, maltose 45, glucose 3 % of the sugars (one published profile; others are lower)',
      density: 'NBS C440 table 114 at 79 % solids',
      allergens: 'some makers use barley enzymes: common practice, no source',
    },
  }),
  row({
    id: 'honey',
    name: 'honey',
    roles: ['doctor', 'flavour'],
    composition: parts({ water: 0.172, sucrose: 0.0131, glucoseSolids: 0.088, invert: 0.692, other: 0.0349 }),
    de: 50,
    densityKilogramPerLitre: 1.42,
    scorches: true,
    alsoCalled: ['runny-honey', 'clear-honey'],
    source: {
      composition:
        'White et al., USDA Technical Bulletin 1261 (1962): water 17.2, fructose 38.2-38.4, glucose 30.3-31.3, sucrose 1.31, maltose 7.3, higher 1.5 %; the last two counted as solids of 50 DE, our judgement',
      density: `between ${usda('19296')} 339 g a cup (1.433) and ${cakeBible}: 11.75 oz (1.408)`,
    },
  }),
  row({
    id: 'molasses',
    name: 'molasses',
    roles: ['doctor', 'flavour'],
    composition: parts({
      water: 0.2187,
      sucrose: 0.406,
      invert: 0.341,
      salt: 0.0009,
      fat: 0.001,
      other: 0.0324,
    }),
    densityKilogramPerLitre: 1.4,
    scorches: true,
    allergens: { contains: [], check: ['sulphites'], unknown: false },
    alsoCalled: ['treacle', 'black-treacle', 'dark-treacle', 'sorghum', 'blackstrap'],
    source: {
      composition: `${usda('19304')}: water 21.87, sugars 74.72, fat 0.10 %, sodium 37 mg; shares of sucrose and invert (29.4 to 24.7) from memory, brought up to that total: our judgement`,
      density: `NBS C440 table 114 at 78 % solids 1.40; ${usda('19304')} 337 g a cup (1.424); ${cakeBible}: 11.25 oz (1.348)`,
      allergens: 'some molasses is sulphured: common practice, no source',
    },
  }),
  row({
    id: 'invert-syrup',
    name: 'invert syrup',
    roles: ['doctor', 'humectant'],
    composition: parts({ water: 0.22, sucrose: 0.04, invert: 0.74 }),
    densityKilogramPerLitre: 1.4,
    clear: true,
    alsoCalled: ['invert-sugar', 'inverted-sugar'],
    source: {
      composition: 'fully inverted trade syrup, 78 % solids: from memory',
      density: 'NBS C440 table 114 at 78 % solids (for sucrose; invert is a little lighter)',
    },
  }),
  row({
    id: 'golden-syrup',
    name: 'golden syrup',
    roles: ['doctor', 'flavour'],
    composition: parts({ water: 0.17, sucrose: 0.32, invert: 0.48, salt: 0.007, other: 0.023 }),
    densityKilogramPerLitre: 1.43,
    alsoCalled: ['light-treacle', 'refiners-syrup'],
    source: {
      composition: 'sucrose about 32, invert about 48, water about 17 %, salt: from memory',
      density: 'NBS C440 table 114 at 83 % solids',
    },
    allergens: noAllergens,
  }),
];
