import { advise } from '../cook/advise.js';
import type { Sight } from '../session/audience.js';
import type { Language } from '../units/language.js';
import { printer } from '../units/printer.js';
import { printerOf } from './facts.js';
import type { Watched } from './watch-frame.js';

/** What is shown of what can be seen from outside. */
export const watchedIn = ({ path, cook, now, isLed }: Sight, language: Language | undefined): Watched =>
  cook === null
    ? {
        kind: 'waiting',
        for: path === null ? 'a cook' : 'its journal',
        printer: printer({ language, unit: 'C', toShownCelsius: (celsius) => celsius }),
      }
    : { kind: 'cook', cook, advice: advise(cook, now), printer: printerOf(cook, language), isLed };
