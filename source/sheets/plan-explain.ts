import type { Batch } from '../batch/batch.js';
import type { Printer } from '../units/printer.js';

export const planExplain = (batch: Batch, _printer: Printer): string => batch.recipe.name;
