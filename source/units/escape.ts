/**
 * Characters that move the cursor, colour, hide, reorder or forge text on a terminal: C0 and C1 controls (with them
 * every ANSI and OSC sequence, which must start with ESC or a C1), bidirectional marks, overrides and isolates,
 * invisible joiners and fillers, line and paragraph separators, tag characters, and halves of surrogate pairs.
 */
const harmful =
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u115f\u1160\u180e\u200b\u200c\u200e\u200f\u2028-\u202e\u2060-\u206f\u3164\ufeff\ufff9-\ufffb]|[\u{e0000}-\u{e007f}]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/gu;

const named: Readonly<Record<string, string>> = { '\n': '\\n', '\r': '\\r', '\t': '\\t' };

/**
 * Text from a file or from typing, safe to show on a terminal: each harmful character becomes visible as `\x1b` or
 * `\u{202e}`, everything else stays as it is. Showing the result twice changes nothing more.
 */
export const escapeForTerminal = (text: string): string =>
  text.replace(harmful, (character) => {
    const code = character.codePointAt(0) ?? 0;
    return (
      named[character] ??
      (code < 0x100 ? `\\x${code.toString(16).padStart(2, '0')}` : `\\u{${code.toString(16)}}`)
    );
  });

/**
 * A value as JSON that is safe to show on a terminal too: harmful characters are written as `\u202e`, which any
 * reader of JSON takes for the characters themselves. `indent` as for JSON.stringify.
 */
export const jsonText = (value: unknown, indent?: number): string =>
  JSON.stringify(value, null, indent).replace(harmful, (character) =>
    character === '\n'
      ? character
      : Array.from(
          { length: character.length },
          (_, unit) => `\\u${character.charCodeAt(unit).toString(16).padStart(4, '0')}`,
        ).join(''),
  );
