import { numericQuantity } from 'numeric-quantity';
import { textAt } from './at.js';

/** A number as typed and the word behind it. */
export type NumberAndWord = { readonly value: number; readonly word: string; readonly comma: CommaUse };

/** How a comma was used: "1,450" can be thousands or a decimal comma, "0,5" and "12,25" only the latter. */
export type CommaUse = 'none' | 'decimal' | 'thousands or decimal';

const longestTyped = 60;
const shape = /^([-+−]?)\s*([\d.,/⁄¼½¾⅐-⅞][\d.,/⁄¼½¾⅐-⅞\s]*?)\s*([^\d\s.,/⁄¼½¾⅐-⅞+−-].*)?$/u;
const thousands = /^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/;
const decimalComma = /^\d*,\d+$/;

const commaUse = (digits: string): CommaUse => {
  if (!digits.includes(',')) return 'none';
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) return 'thousands or decimal';
  return 'decimal';
};

/**
 * Splits "1 1/4 cup" into 1.25 and "cup". Fractions, vulgar fractions, mixed numbers, decimal point or comma and
 * thousands commas are understood; a lone "1,450" is 1450. Null where there is no finite number in front.
 */
export const readNumber = (typed: string): NumberAndWord | null => {
  const text = typed.trim();
  if (text.length > longestTyped) return null;
  const parts = shape.exec(text);
  if (parts === null) return null;
  const [sign, digits, word] = [textAt(parts, 1), textAt(parts, 2), textAt(parts, 3)];
  const plain = thousands.test(digits)
    ? digits.replaceAll(',', '')
    : decimalComma.test(digits)
      ? digits.replace(',', '.')
      : digits;
  if (plain.includes(',')) return null;
  const value = numericQuantity(plain, { round: false });
  if (!Number.isFinite(value)) return null;
  return { value: sign === '-' || sign === '−' ? -value : value, word: word.trim(), comma: commaUse(digits) };
};
