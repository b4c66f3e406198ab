import { escapeForTerminal } from '../../units/escape.js';
import type { batchNoteTexts, planProblemTexts } from '../en/batch.js';
import type { Translated } from '../texts.js';
import { comma } from './words.js';

/** A share rounded down, so that what is said fits: "0,9". */
const downTo = (share: number): string => comma(Math.floor(share * 100) / 100);
export const kilopascals = (pascal: number): string => `${comma((pascal / 1000).toFixed(1))} kPa`;

/** What is odd about a batch, and what to do. */
export const deBatchNotes = {
  'plan.note.air': ({ pressurePascal, usedPascal }) =>
    `Ein Luftdruck von ${kilopascals(pressurePascal)} liegt außerhalb dessen, was von kochendem Sirup bekannt ist; genommen werden ${kilopascals(usedPascal)}. Trau dem, was die Finger in kaltem Wasser fühlen.`,
  'plan.note.pot': ({ neededLitres, haveLitres, batches, eachGrams, mostShare }, printer) =>
    `Das würde überschäumen: es braucht einen Topf von ${printer.litres(neededLitres)}, viermal sein Volumen, und deiner fasst ${printer.litres(haveLitres)}. Koch das ${downTo(mostShare)}-fache davon, oder ${batches} Ansätze zu je ${printer.grams(eachGrams)}, oder nimm einen größeren Topf.`,
  'plan.note.beyond-curve':
    'Das Ziel liegt jenseits dessen, was von diesem Sirup bekannt ist. Genommen wird die nächste bekannte Temperatur; trau dem, was die Finger in kaltem Wasser fühlen.',
  'plan.note.dry': ({ startsCelsius, floorCelsius }, printer) =>
    `Hier ist so wenig Wasser, dass es erst bei ${printer.dial(startsCelsius)} kochte, über der Untergrenze seines Ziels (${printer.dial(floorCelsius)}), und anbrennen würde, bevor sich der Zucker löst. Gib Wasser dazu: das Kochen treibt es wieder aus.`,
  'plan.note.stem': ({ depthMillimetres, stemMillimetres }, printer) =>
    `Am Ende steht der Sirup ${printer.millimetres(depthMillimetres)} tief, und das Thermometer will ${printer.millimetres(stemMillimetres)}: es zeigte zu wenig. Kipp den Topf zum Ablesen, damit sich der Sirup darum sammelt, oder nimm einen engeren Topf.`,
  'plan.note.grain': ({ risk, syrupGrams }, printer) =>
    `${risk === 'high' ? 'Das wird sehr wahrscheinlich körnig' : 'Das kann körnig werden'}. ${printer.grams(syrupGrams)} mehr Glukose- oder Maissirup würden das verhindern.`,
  'plan.note.runny':
    'Auf dieses Ziel gekocht bleibt es zu weich, um die Form zu halten. Setz das Ziel höher, oder nimm weniger Sirup.',
  'plan.note.glassy':
    'Auf dieses Ziel gekocht erstarrt es wie Glas und splittert, statt sich kauen zu lassen. Setz das Ziel tiefer, wenn man es kauen soll.',
  'plan.note.damp': ({ humidity }, printer) =>
    `Der Raum ist feucht (${printer.percent(humidity)}): vom Herd geht es im oberen Teil des Zielbereichs, weil Bonbon Wasser aufnimmt, sobald es abkühlt.`,
  'plan.note.frost': ({ celsius, known }, printer) =>
    `Im Raum friert es (${printer.degrees(celsius)})${known ? ': was seine Luft mit dem Bonbon tut, ist für 0 °C gerechnet' : ''}. Halt Zutaten, Probewasser und die Schüssel für Hände drinnen, bis sie gebraucht werden; auf kalter Platte wird das Bonbon früher fest, also wärm die Platte.`,
  'plan.note.sticky': ({ seconds, humidity }, printer) =>
    `In dieser Luft (${printer.percent(humidity)}) wird ein unverpacktes Stück nach ungefähr ${printer.time(seconds[0])} bis ${printer.time(seconds[1])} klebrig. Wickel bald ein, und schließ die Dose.`,
  'plan.note.pair': ({ grams, mostGrams }, printer) =>
    `${printer.grams(grams)} sind zu viel für ein Paar, das etwa ${printer.grams(mostGrams)} schafft, bevor es fest wird. Hol mehr Hände, oder halt einen Teil warm.`,
  'plan.note.small': ({ solidsGrams }, printer) =>
    `So wenig Sirup (${printer.grams(solidsGrams)} Zucker) steigt schnell und ist in Augenblicken über dem Ziel. Nimm kleine Hitze und einen kleinen Topf, oder mach mehr.`,
  'plan.note.cut': ({ cutMillimetres, grams, ropeMillimetres }, printer) =>
    `Ein Stück von ${printer.grams(grams)} aus einem Strang von ${printer.millimetres(ropeMillimetres)} wäre ${printer.millimetres(cutMillimetres)} lang. Ändere eines von beiden unter "piece".`,
} as const satisfies Translated<typeof batchNoteTexts>;

/** Why there is no plan. */
export const dePlanProblems = {
  'plan.bad.nothing-boils':
    'Im Topf löst sich nichts: Zucker oder Sirup muss bei phase mix oder boil hinein.',
  'plan.bad.air': ({ pressurePascal, lowPascal, highPascal }) =>
    `Ein Luftdruck von ${kilopascals(pressurePascal)} liegt außerhalb dessen, was von kochendem Sirup bekannt ist, ${kilopascals(lowPascal)} bis ${kilopascals(highPascal)} (etwa 5500 m über dem Meer bis 700 m darunter). Prüf Höhe, Druck und die Ablesung in kochendem Wasser.`,
  'plan.bad.altitude': ({ found, low, high }, printer) =>
    `"${escapeForTerminal(found)}" ist keine Höhe für eine Küche: ${printer.metres(low)} bis ${printer.metres(high)} lassen sich planen. Tipp zum Beispiel --altitude 1450m oder --altitude 4750ft.`,
  'plan.bad.pressure': ({ found, lowPascal, highPascal }) =>
    `"${escapeForTerminal(found)}" ist kein Luftdruck an einem Küchenbarometer: ${kilopascals(lowPascal)} bis ${kilopascals(highPascal)} lassen sich planen. Tipp zum Beispiel --pressure 850hPa, wie gemessen und nicht auf Meereshöhe umgerechnet.`,
  'plan.bad.count': ({ option, found, whole, most }) =>
    `--${option} braucht eine ${whole ? 'ganze Zahl' : 'Zahl'} über 0 und bis ${most}, und "${escapeForTerminal(found)}" ist keine. Tipp zum Beispiel --${option} ${whole ? '24' : '1.5'}.`,
  'plan.bad.children': ({ guests, children }, printer) =>
    `${printer.count(children, 'Kind', 'Kinder')} unter ${printer.count(guests, 'Gast', 'Gästen')}, das geht nicht: Kinder zählen zu den Gästen. Tipp zum Beispiel --guests 24 --children 10.`,
  'plan.bad.children-alone':
    '--children sagt, wie viele der Gäste Kinder sind, braucht also --guests. Tipp zum Beispiel --guests 24 --children 10.',
  'plan.bad.several': ({ options }, printer) =>
    `${printer.list(options.map((option) => `--${option}`))} sagen jedes, wie viel es werden soll. Behalt eines davon.`,
  'plan.bad.weights': ({ found }) =>
    `"${escapeForTerminal(found)}": darin wird hier nicht gewogen. Tipp --weights grams (Gramm) oder --weights ounces (Unzen).`,
  'plan.bad.pot': ({ found, low, high }, printer) =>
    `"${escapeForTerminal(found)}" ist keine Größe für einen Kochtopf: ${printer.litres(low)} bis ${printer.litres(high)} lassen sich planen. Tipp zum Beispiel --pot 3l.`,
  'plan.bad.pot-too-small': ({ neededLitres, haveLitres, batches, eachGrams, mostPieces }, printer) =>
    `Das würde überschäumen: es braucht einen Topf von ${printer.litres(neededLitres)}, viermal sein Volumen, und deiner fasst ${printer.litres(haveLitres)}. Bis zu ${printer.count(mostPieces, 'Stück', 'Stück')} auf einmal passen (--pieces ${mostPieces}): koch ${batches} Ansätze zu je ${printer.grams(eachGrams)}, oder nimm einen größeren Topf.`,
  'plan.bad.size': ({ grams, low, high }, printer) =>
    `Das wäre ein Ansatz von ${printer.grams(grams)}; ${printer.grams(low)} bis ${printer.grams(high)} lassen sich planen. Verlang ${grams > high ? 'weniger' : 'mehr'}.`,
} as const satisfies Translated<typeof planProblemTexts>;
