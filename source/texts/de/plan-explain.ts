import { escapeForTerminal } from '../../units/escape.js';
import type { Parts, planExplainTexts } from '../en/plan-explain.js';
import type { Translated } from '../texts.js';
import { kilopascals } from './batch.js';
import { comma, firmnessWord, stoveWord } from './words.js';

type Span = readonly [low: number, high: number];

const entry = (title: string, { formula, given, gives, source, known }: Parts): string =>
  [
    title,
    `  Formel    ${formula}`,
    `  mit       ${given}`,
    `  gibt      ${gives}`,
    `  Quelle    ${source}`,
    `  bekannt   ${known}`,
  ].join('\n');

const fixed = (value: number, decimals: number): string => comma(value.toFixed(decimals));
const kelvin = (value: number): string => `${fixed(value, 1)} K (${fixed(value * 1.8, 1)} °F)`;
const kelvinSpan = ([low, high]: Span): string =>
  low.toFixed(1) === high.toFixed(1)
    ? kelvin(low)
    : `${fixed(low, 1)} bis ${fixed(high, 1)} K (${fixed(low * 1.8, 1)} bis ${fixed(high * 1.8, 1)} °F)`;
const degrees = (celsius: number): string =>
  `${fixed(celsius, 1)} °C (${(celsius * 1.8 + 32).toFixed(0)} °F)`;
const degreeSpan = ([low, high]: Span): string =>
  `${fixed(low, 1)} bis ${fixed(high, 1)} °C (${(low * 1.8 + 32).toFixed(0)} bis ${(high * 1.8 + 32).toFixed(0)} °F)`;
const percentSpan = ([low, high]: Span): string => `${fixed(low * 100, 1)} bis ${fixed(high * 100, 1)} %`;
const grams = (value: number): string => `${value < 10 ? fixed(value, 1) : value.toFixed(0)} g`;

const basisWords = {
  'two points': 'zwei Punkte',
  ice: 'Eis',
  'boiling water': 'kochendes Wasser',
  'taken as right': 'als richtig genommen',
} as const;

/** `plan --explain`: formula, inputs, result, source and uncertainty of every number. Always SI, Fahrenheit beside it. */
export const dePlanExplain = {
  'plan.explain.head':
    'Wie diese Zahlen zustande kommen. Temperaturen hier sind wahr, nicht die des Thermometers.',

  'plan.explain.air': ({ from, altitudeMetres, pressurePascal }) =>
    entry('Luftdruck', {
      formula: {
        altitude: 'p = 101,325 kPa (1 - 0,0065 H / 288,15)^5,2559, H die Höhe in Metern',
        pressure: 'wie angegeben',
        'boiling water': 'der Druck, bei dem Wasser dort kocht, wo das Thermometer es sagte',
        'assumed sea level': 'p = 101,325 kPa, weil weder Höhe noch Druck bekannt sind',
      }[from],
      given: altitudeMetres === null ? 'keine Höhe' : `Höhe ${altitudeMetres.toFixed(0)} m`,
      gives: kilopascals(pressurePascal),
      source: from === 'boiling water' ? 'IAPWS R7-97 (2012), Eq. 30' : 'ISO 2533:1975, Standard Atmosphere',
      known: 'das Wetter verschiebt ihn um etwa 2 kPa, und kochendes Wasser um 0,6 K (1 °F)',
    }),

  'plan.explain.water': ({ pressurePascal, boils }) =>
    entry('Kochendes Wasser', {
      formula: 'die Temperatur, bei der reines Wasser den Dampfdruck der Luft hat',
      given: kilopascals(pressurePascal),
      gives: degrees(boils),
      source: 'IAPWS R7-97 (2012), Eq. 31',
      known: 'auf 0,01 K für den angegebenen Luftdruck',
    }),

  'plan.explain.curve': ({ sucroseGrams, glucose, invertGrams, saltGrams, waterGrams, starts, solids }) =>
    entry('Kochender Sirup', {
      formula:
        'Wasseraktivität x Dampfdruck von Wasser = Luftdruck; ln a = ln(1-x) + Q/(RT) x^2 (1 + ax + bx^2), Q -17638 J/mol, a -1,0038, b -0,24653, x der Anteil aller gelösten Moleküle',
      given: [
        `Saccharose ${grams(sucroseGrams)}`,
        ...glucose.map((part) => `Glukosesirup-Trockenmasse ${grams(part.grams)} von ${part.de} DE`),
        ...(invertGrams >= 0.5 ? [`Invertzucker ${grams(invertGrams)}`] : []),
        ...(saltGrams >= 0.05 ? [`Salz ${grams(saltGrams)}`] : []),
        `Wasser ${grams(waterGrams)}; Fett und Stärke zählen nicht mit`,
      ].join(', '),
      gives: `kocht ab ${degrees(starts)}; am Ziel sind ${percentSpan(solids)} von Gelöstem und Wasser gelöst`,
      source:
        'Starzak & Peacock 1997, Zuckerindustrie 122:380, Koeffizienten von Saska 2002, Int. Sugar J. 104:500, Eq. 3; gemischte Sirupe nach der Zahl der Moleküle, Glukosesirup 18016/DE g/mol',
      known:
        'auf 2 K (4 °F) von 80 bis 95 % Trockenmasse, 5 K über 96 %: veröffentlichte Tafeln unterscheiden sich um so viel, und eine gemessene Kurve eines gemischten Sirups fand sich nicht',
    }),

  'plan.explain.target': ({ seaLevel, today, curveKelvin, perFeetKelvin, boilingWaterKelvin }) =>
    entry('Ziel heute', {
      formula: 'die Temperatur, bei der der Sirup mit demselben Rest Wasser in dieser Luft kocht',
      given: `Meereshöhe ${degreeSpan(seaLevel)}`,
      gives: `${degreeSpan(today)}, tiefer um ${kelvinSpan(curveKelvin)}. Nach den Faustregeln: ${
        perFeetKelvin === null ? '' : `1 °F je 500 ft, ${kelvin(perFeetKelvin)}; `
      }was kochendes Wasser zu wenig zeigt, ${kelvin(boilingWaterKelvin)}${
        Math.abs(boilingWaterKelvin) < 0.5
          ? ''
          : `. Sirup verschiebt sich um das ${fixed(curveKelvin[1] / boilingWaterKelvin, 2)}-fache von Wasser, weil er heißer kocht`
      }`,
      source:
        'die Siedekurve oben; Regeln: Colorado State University Extension (500 ft), Utah State University Extension (kochendes Wasser)',
      known: 'auf ein paar Zehntel Kelvin: Fehler der Kurve heben sich im Unterschied auf',
    }),

  'plan.explain.dial': ({ id, basis, present, aim, shown, sd }) =>
    entry('Thermometer', {
      formula: {
        'two points': 'eine Gerade durch seine Ablesungen in Eis (0 °C) und in kochendem Wasser (wie oben)',
        ice: 'überall derselbe Fehler wie in Eis',
        'boiling water': 'überall derselbe Fehler wie in kochendem Wasser',
        'taken as right': 'keine: seine Ablesungen gelten, wie sie sind',
      }[basis],
      given: `${present ? escapeForTerminal(id ?? 'ein Thermometer') : 'kein Thermometer'}, Grundlage: ${basisWords[basis]}`,
      gives: `zeigt ${degrees(shown)}, wenn der Sirup ${degrees(aim)} hat`,
      source:
        'Wisconsin Food Code Fact Sheet 7 für die beiden Prüfungen; die Gerade bis zu Bonbontemperaturen fortzusetzen, ist unser Urteil',
      known: `auf ${kelvin(2 * sd)} nach beiden Seiten (zwei Standardabweichungen)`,
    }),

  'plan.explain.takeoff': ({ today, aim, carryOver, takeOff, stove, damp }) =>
    entry('Vom Herd', {
      formula: `zur Ruhe kommen ${damp ? 'bei zwei Dritteln (feuchter Raum)' : 'in der Hälfte'} des Zielbereichs, weniger dem, was die Hitze des Topfs dazugibt`,
      given: `Zielbereich ${degreeSpan(today)}, ${stoveWord(stove)}: ${kelvin(carryOver)} auf dem Untersetzer`,
      gives: `${degrees(takeOff)}, zur Ruhe bei ${degrees(aim)}`,
      source:
        'Nachhitze: ein Fachbuch von etwa 1909 und Rezeptseiten, 1 bis 3 °F; der Ort im Zielbereich ist unser Urteil; oberes Ende an feuchten Tagen: Exploratorium',
      known: 'auf 1 K (2 °F), bis diese Küche ihre eigene gezeigt hat',
    }),

  'plan.explain.mass': ({ totalGrams, waterGrams, waterLeft, laterGrams, cookedGrams, moisture }) =>
    entry('Wasser, das verkocht', {
      formula: 'alles außer Wasser bleibt: Rest Wasser = Gelöstes x (1 - s) / s, s die Trockenmasse am Ziel',
      given: `${grams(totalGrams)} im Topf, davon ${grams(waterGrams)} Wasser; ${grams(laterGrams)} später dazu`,
      gives: `${grams(waterLeft[0])} bis ${grams(waterLeft[1])} Rest Wasser; ${grams(cookedGrams)} gekocht, ${percentSpan(moisture)} Wasser im Ganzen`,
      source: 'Erhaltung der Masse; Zusammensetzungen wie in: kettlehand recipes items',
      known: 'auf 1 % der Masse, aus 2 K der Kurve und dem Wasser in gekauften Sirupen',
    }),

  'plan.explain.yield': ({ cookedGrams, shares, pieces }) =>
    entry('Ausbeute', {
      formula: `gekochte Masse x ${comma(shares.low)}; ${comma(shares.typical)}; ${comma(shares.high)}; Stücke = Masse / Masse eines Stücks, ganze`,
      given: `${grams(cookedGrams)} gekocht`,
      gives: `${grams(cookedGrams * shares.low)}; ${grams(cookedGrams * shares.typical)}; ${grams(cookedGrams * shares.high)}; ${pieces.low}, ${pieces.typical}, ${pieces.high} Stück`,
      source:
        'Verluste von 8 bis 20 %; neun veröffentlichte Rezepte nennen 69 bis 101 % dessen, was ihre Zutaten geben können, Median 89 %',
      known: 'in der gezeigten Spanne; wieg, was du bekommst, und der nächste Plan lässt sich daran messen',
    }),

  'plan.explain.rope': ({ expectedGrams, pieceGrams, ropeMillimetres, metres, cut, density }) =>
    entry('Strang und Stücke', {
      formula: 'Länge = Masse / (Dichte x pi/4 x Durchmesser^2)',
      given: `${grams(expectedGrams)}, Stücke von ${grams(pieceGrams)}, Strang ${comma(ropeMillimetres)} mm, ${comma(density.typical)} g/cm3`,
      gives: `${fixed(metres, 1)} m, alle ${cut.toFixed(0)} mm schneiden`,
      source:
        'Sirup ohne Luft 1,45 bis 1,5 g/cm3 (NBS Circular C440); gezogenes Bonbon: unser Urteil, kein gemessener Wert gefunden',
      known: `${comma(density.low)} bis ${comma(density.high)} g/cm3: 8 % nach beiden Seiten`,
    }),

  'plan.explain.glass': ({ moisture, glass, pulls, room, effects }) =>
    entry('Wie es wird', {
      formula:
        'Glasübergang = (Summe der Zucker x ihr eigener + 4,7 x Wasser x -135 °C) / (Zucker + 4,7 x Wasser); Festigkeit danach, wie weit der Raum darüber liegt: 0, 8, 25, 45 K',
      given: `${percentSpan(moisture)} Wasser im Ganzen, Raum ${degrees(room)}`,
      gives: `Glasübergang ${degreeSpan(glass)}, zu weich zum Ziehen über ${degrees(pulls[1])}, zu steif unter ${degrees(pulls[0])} (Hände warten auf ihre eigene Grenze); ${effects
        .map(
          (effect) =>
            `${effect.kelvin > 0 ? '+' : '-'}${comma(Math.abs(effect.kelvin))} K: ${effect.glass.toFixed(0)} °C, ${fixed(effect.moisture * 100, 1)} % Wasser, ${firmnessWord(effect.firmness)}`,
        )
        .join('; ')}`,
      source:
        'Gordon-Taylor (Berk 2008, Eq. 1.13); trockene Zucker: Mouritsen & Styrbaek; Sirup-Trockenmasse und das Gewicht von Wasser: Roos & Karel 1991 (aus dem Gedächtnis); Ziehen nach der Viskosität, Williams-Landel-Ferry; Wörter und Grenzen: unser Urteil',
      known: 'auf 6 K; der Luftdruck verschiebt es nie',
    }),

  'plan.explain.grain': ({
    sucroseGrams,
    doctorGrams,
    inverted,
    ratio,
    supersaturation,
    missingGrams,
    enough,
    tooLittle,
  }) =>
    entry('Körnigwerden', {
      formula: `trockene Sirupmasse und Invertzucker über Saccharose: gering ab ${comma(enough)}, hoch unter ${comma(tooLittle)}`,
      given: `${grams(doctorGrams)} auf ${grams(sucroseGrams)} Saccharose; Säure spaltet davon etwa ${(inverted * 100).toFixed(0)} % in 28 min`,
      gives: `${ratio === null ? 'keine Saccharose' : fixed(ratio, 2)}${
        supersaturation === null
          ? ''
          : `; ${supersaturation.toFixed(0)}-mal so viel Saccharose für ihr Wasser, wie bei Raumtemperatur gelöst bleiben kann, also hält sie der Sirup`
      }; ${missingGrams > 0.5 ? `${grams(missingGrams)} trockene Sirupmasse fehlen` : 'nichts fehlt'}`,
      source:
        "Hartel 2012, The Manufacturing Confectioner (80:20 das magerste); Knott's Pop Corn Book (75:25); Inversion: Vukov 1965; Löslichkeit: CRC Handbook",
      known:
        'eine Regel für gut geführte Ansätze; Inversion auf die Größenordnung; ein Kristall an der Wand macht sie zunichte',
    }),

  'plan.explain.humidity': ({ humidity, room, sticky }, printer) =>
    entry('Luft, mit der es im Gleichgewicht ist', {
      formula: 'Wasseraktivität bei Raumtemperatur; feuchtere Luft macht es klebrig, trockenere trocknet es',
      given:
        room === null
          ? 'Luftfeuchte des Raums nicht bekannt'
          : `Raum bei ${(room * 100).toFixed(0)} % Luftfeuchte`,
      gives: `${percentSpan(humidity)} Luftfeuchte${
        room === null
          ? ''
          : sticky === null
            ? '; diese Luft macht es nicht klebrig'
            : `; unverpackt klebrig nach ${printer.time(sticky[0])} bis ${printer.time(sticky[1])}`
      }`,
      source:
        'Starzak & Mathlouthi 2006, Food Chem. 96:346 (Koeffizienten aus dem Gedächtnis), erweitert auf Starzak & Peacock 1997; Zeit: 5 bis 20 g Wasser je m2 bei 2 bis 5 mm/s, unser Urteil',
      known: 'auf 8 % Luftfeuchte; die Zeit auf einen Faktor vier',
    }),

  'plan.explain.pot': ({ litres, needed, depth }) =>
    entry('Topf', {
      formula: 'viermal das Volumen des gelösten Sirups; Tiefe = Volumen / Fläche des Topfs',
      given: `${fixed(litres, 2)} l im gelösten Zustand`,
      gives: `${fixed(needed, 1)} l${depth === null ? '; kein Durchmesser, also keine Tiefe' : `; anfangs ${depth[0].toFixed(0)} mm tief, am Ende ${depth[1].toFixed(0)} mm`}`,
      source:
        'etwa viermal: Household Discoveries um 1908, Rezeptseiten 3 bis 4; Dichte: ICUMSA SPS-4 form, über 80 °C fortgesetzt',
      known: 'auf 2 % des Volumens; Schaum von Butter, Melasse oder Milch kann mehr brauchen',
    }),

  'plan.explain.never':
    'Luftdruck verschiebt nur Siedetemperaturen und Kochstufen. Brenngrenze, Grenzen für Hände, Glasübergang und Verbrennungszeiten bleiben.',
} as const satisfies Translated<typeof planExplainTexts>;
