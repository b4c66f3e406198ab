import { passedMinutes } from '../measures.js';
/**
 * What is written for an eye two metres away, and around the curve. `far.*` is written in block letters where there is
 * room: capitals, as short as they can be.
 */
export const farTexts = {
  'key.view': 'far or near view',
  'key.view.far': 'far view',
  'key.view.near': 'near view',
  'key.plot': 'curve',
  'key.plot.close': 'close curve',

  'far.now': (v: { ago: number; unit: string }) =>
    v.ago < 60 ? `NOW ${v.unit}` : `${passedMinutes(v.ago)} MIN AGO`,
  'far.target': (v: { unit: string }) => `TARGET ${v.unit}`,
  'far.minutes': 'MIN TO GO',
  'far.hours': 'H TO GO',
  'far.seconds': 'S TO GO',
  'far.off': 'OFF IT',
  'far.off.now': 'NOW',
  'far.middle': (v: { ago: number; unit: string }) =>
    v.ago < 60 ? `MIDDLE ${v.unit}` : `${passedMinutes(v.ago)} MIN AGO`,
  'far.middle.none': 'MIDDLE ?',
  'far.limit': (v: { unit: string }) => `HANDS BELOW ${v.unit}`,
  'far.due': 'DUE',
  'far.list': 'There is a list to this: v shows it.',

  // A warning that wants an act at once has its own words for two metres; troubles have theirs.
  'far.scorch-near.shout': 'OFF THE HEAT\nNO WATER',
  'far.past-window.shout': 'OFF THE HEAT\nPAST TARGET',
  'far.past-window.off.shout': 'PAST TARGET',
  'far.middle-above-limit.shout': 'PUT IT DOWN\nTOO HOT',

  // The curve.
  'plot.empty': 'No reading yet: the curve begins with the first.',
  'plot.minutes': 'min',
  'plot.legend': 'readings, line between; ahead: the forecast, 8 times in 10 within the shade',
} as const;
