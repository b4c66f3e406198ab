import { isAlias, isMap, isNode, isScalar, isSeq } from 'yaml';
import { type Message, message } from '../texts/message.js';

/** Our judgement: a recipe needs five levels. */
const deepest = 12;
const deepestBrackets = 32;

/** Brackets or dashes so deep that reading them would cost more than any honest file. */
export const tooDeepToRead = (text: string): boolean => {
  if (/^[ \t]*(?:[-?][ \t]+){33}/m.test(text)) return true;
  let depth = 0;
  for (const character of text) {
    if (character === '[' || character === '{') depth += 1;
    else if ((character === ']' || character === '}') && depth > 0) depth -= 1;
    if (depth > deepestBrackets) return true;
  }
  return false;
};

const isReference = (node: unknown): boolean => isAlias(node) || (isNode(node) && node.anchor !== undefined);

/** The first thing in the tree that no such file may hold: an alias or anchor, too many levels, a field written twice. */
export const notAllowed = (
  node: unknown,
  depth: number,
): { readonly at: unknown; readonly said: Message } | null => {
  if (isReference(node)) return { at: node, said: message('yaml.alias') };
  if (depth > deepest) return { at: node, said: message('yaml.too-deep') };
  if (isMap(node)) {
    const seen = new Set<string>();
    for (const pair of node.items) {
      const key = isScalar(pair.key) ? String(pair.key.value) : null;
      if (key !== null && seen.has(key)) return { at: pair.key, said: message('yaml.duplicate-key') };
      if (key !== null) seen.add(key);
      const bad = notAllowed(pair.key, depth + 1) ?? notAllowed(pair.value, depth + 1);
      if (bad !== null) return bad;
    }
  }
  if (isSeq(node)) {
    for (const item of node.items) {
      const bad = notAllowed(item, depth + 1);
      if (bad !== null) return bad;
    }
  }
  return null;
};
