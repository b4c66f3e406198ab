/** Each sign of these is one cell and one unit of a string: Latin, dashes, arrows, lines, blocks, shapes, braille. */
const narrow =
  /^[\u0020-\u007e\u00a0-\u00ac\u00ae-\u02ff\u2010-\u2027\u2190-\u21ff\u2500-\u25ff\u2800-\u28ff]*$/;

export const isNarrow = (text: string): boolean => narrow.test(text);

/** Made when it is first asked for: its tables take a twentieth of the time to the first frame. */
let segmenter: Intl.Segmenter | null = null;

/** What people see as one sign each, in order; no part of a text is left out. */
export const signsOf = (text: string): readonly string[] => {
  if (isNarrow(text)) return [...text];
  segmenter ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  return Array.from(segmenter.segment(text), ({ segment }) => segment);
};
