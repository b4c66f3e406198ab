import fc from 'fast-check';
import { expect, it } from 'vitest';
import { escapeForTerminal, jsonText } from '../../source/units/escape.js';

it('JSON for programs says the same value, and shows nothing harmful to a person', () => {
  expect(jsonText({ typed: '\u202e\u009b31m', tag: '\u{e0041}' })).toBe(
    '{"typed":"\\u202e\\u009b31m","tag":"\\udb40\\udc41"}',
  );
  fc.assert(
    fc.property(fc.jsonValue(), fc.string({ unit: 'binary' }), (value, text) => {
      for (const indent of [undefined, 2]) {
        const written = jsonText({ value, text }, indent);
        expect(JSON.parse(written)).toEqual(JSON.parse(JSON.stringify({ value, text })));
        expect(escapeForTerminal(written.replaceAll('\n', ' '))).toBe(written.replaceAll('\n', ' '));
      }
    }),
  );
});
