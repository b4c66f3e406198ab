import { type Everyday, everydayIn } from '../everyday.js';

const sayings: Everyday = {
  urgent: [
    [
      'verbrannt*|verbrüh*|brenn*|brannte|weh|au|aua|autsch|verletzt',
      'Haut: sofort kühles fließendes Wasser, dann tipp "burn". Der Zucker brennt an: "scorched". Flammen: "fire".',
    ],
    ['feuer|flamme*', 'Flammen: Deckel über den Topf, Hitze aus, dann tipp "fire".'],
    ['rauch*|qualm*|riech*|stink*|angebrannt', 'Der Zucker brennt an: Topf vom Herd, dann tipp "scorched".'],
    ['erstick*|verschluckt|keine luft', 'Ruf Hilfe, dann tipp "choking". Allergische Reaktion: "allergy".'],
    ['allerg*', 'Ruf Hilfe, dann tipp "allergy".'],
    ['überläuft|läuft über|übergelaufen|überkoch*|kocht über', 'Zuerst Hitze aus, dann tipp "overflow".'],
    ['schaum*|schäumt', 'Schaum: kleiner schalten, Topf vom Herd schieben, dann tipp "foam".'],
    ['glas|scherbe*|zerbrochen|quecksilber', 'Glas am Topf: alle treten zurück, tipp "glass".'],
    ['verschüttet|ausgelaufen', 'Sirup auf Boden oder Tisch: niemand tritt dorthin, tipp "spill".'],
  ],
  others: [
    ['strom*|stromausfall|kein strom|dunkel', 'Kein Strom: Knopf auf aus, dann tipp "power".'],
    ['körn*|krist*|sandig', 'Körner im Sirup: tipp "trouble grains".'],
    ['zu weit|drüber|übers ziel', 'Übers Ziel: Topf vom Herd, dann tipp "trouble overshoot".'],
    [
      'zu heiß|zu heiss',
      'Übers Ziel: "trouble overshoot". Zu heiß für Hände: nur Werkzeug, messen, tipp "middle 46c".',
    ],
    ['zu weich|klebt|klebrig', 'Zu weich: tipp "trouble soft". Wie der Tropfen war: "soft ball".'],
    [
      'zu hart|zu steif|steif|zu fest',
      'Zu steif zum Ziehen: tipp "trouble stiff". Wie der Tropfen war: "hard ball".',
    ],
    [
      'kaputt|thermometer*|temperatur*|fühler',
      'Was es zeigt, tippst du als Ziffern: 238. Es zeigt Unsinn: "trouble thermometer". Es gibt keines: "thermometer none".',
    ],
    [
      'hart*|fest*|weich*|ballen|kugel|bruch|faden|fäden',
      'Wie der Tropfen war: "soft ball" (weich), "firm ball" (fest), "hard ball" (hart), "soft crack" oder "hard crack" (Bruch).',
    ],
    [
      'aus|an|ausschalten|einschalten|herunter|runter|vom herd',
      'Tipp, was aus oder an ist: "heat off" (Hitze), "pot off" (Topf), "lid off" (Deckel).',
    ],
    [
      'klein*|mittel*|groß*|hoch|höher|hitze|herd|stufe',
      'Wie der Knopf steht: tipp "heat low" (klein), "heat medium" (mittel) oder "heat high" (groß).',
    ],
    [
      'kocht|blubbert|blasen|gelöst|klar|weiter|fertig|erledigt|bereit|gemacht|ok|okay',
      'Ist es das, worauf der Schritt wartet? Dann tipp "done".',
    ],
    ['ja|jawohl|jep|stimmt|genau|richtig', 'Wenn es stimmt, tipp "yes".'],
    ['nein|nö|nicht|falsch|nee', 'Wenn es nicht stimmt, tipp "no".'],
    ['ende|beenden|schluss|tschüss|raus', 'Zum Verlassen tipp "leave". Alles bleibt erhalten.'],
    ['zurück|fehler|vertippt|ups|hoppla', 'Das zuletzt Getippte nimmst du mit "undo" zurück.'],
    [
      'kind*|besuch*|erwachsene*|handschuh*',
      'Wessen Hände ziehen: tipp "hands children" (Kinder), "hands visitors" (zum ersten Mal) oder "hands bare" (geübt).',
    ],
    ['wasser dazu|mehr wasser', 'Wasser, das dazukam: tipp es so: "water 30ml".'],
    [
      'gieß*|gegossen|gieße*',
      'Ist es das, worauf der Schritt wartet? Dann tipp "done". Schon länger gegossen: "at fold".',
    ],
    ['abbrechen|aufgeben|wegwerfen', 'Ein Ansatz, der aufgegeben wird: tipp "stop".'],
    ['warte*|pause|moment', 'Beim Warten ist nichts zu tippen; die Uhr läuft weiter.'],
    [
      'hallo|was|warum|wieso|wie|wann|wo|wer|hilfe',
      'Was jetzt zu tun ist, und warum, steht darüber. "help" zeigt die Wörter.',
    ],
    ['etwa|ungefähr|grad', 'Eine Ablesung sind nur Ziffern: 238, 238f oder 114.5c.'],
  ],
};

export const everyday = everydayIn(sayings);
/** For the tests: what is to be typed must be understood. */
export const everydaySayings = sayings;
