import { isMap, isScalar, isSeq, LineCounter, type Node, parseAllDocuments, type YAMLError } from 'yaml';
import { type Message, message } from '../texts/message.js';
import { readNumber } from '../units/number.js';
import { notAllowed, tooDeepToRead } from './guard.js';
import { nearest } from './items.js';

/** What is wrong in a file, and where: the field as a path ("ingredients[2].amount"), the line from 1. */
export type FileProblem = {
  readonly file: string;
  readonly line: number;
  readonly field: string;
  readonly message: Message;
};

const longestText = 256 * 1024;
const mostProblems = 20;
const longestEcho = 40;

/** What was found, short enough for a sentence. */
export const echo = (found: string): string => {
  const text = found.trim();
  return text.length > longestEcho ? `${text.slice(0, longestEcho)}...` : text;
};

/** Where the words of a problem come from: the YAML library's codes, in our words. */
const yamlMessages: Readonly<Partial<Record<YAMLError['code'], Message>>> = {
  TAB_AS_INDENT: message('yaml.tab'),
  BAD_INDENT: message('yaml.indent'),
  MISSING_CHAR: message('yaml.unclosed'),
  BLOCK_IN_FLOW: message('yaml.unclosed'),
  MULTIPLE_DOCS: message('yaml.several-documents'),
  MULTILINE_IMPLICIT_KEY: message('yaml.no-colon'),
  BLOCK_AS_IMPLICIT_KEY: message('yaml.two-colons'),
  BAD_SCALAR_START: message('yaml.needs-quotes'),
  TAG_RESOLVE_FAILED: message('yaml.tag'),
};

class Sheet {
  readonly problems: FileProblem[] = [];

  constructor(
    readonly file: string,
    private readonly lines: LineCounter,
  ) {}

  lineOf(offset: number): number {
    return Math.max(1, this.lines.linePos(offset).line);
  }

  /** So many that nobody reads another. */
  get full(): boolean {
    return this.problems.length >= mostProblems;
  }

  add(line: number, field: string, said: Message): void {
    if (this.problems.length < mostProblems)
      this.problems.push({ file: this.file, line, field, message: said });
  }
}

type NumberRule = { readonly low: number; readonly high: number; readonly unit: string };

/** One place in the file. Every scalar is text as the person wrote it; a question that it cannot answer adds a problem. */
export class Field {
  constructor(
    private readonly sheet: Sheet,
    readonly path: string,
    private readonly node: Node | null,
    private readonly line: number,
  ) {}

  /** Left out, or written with nothing behind it. */
  get missing(): boolean {
    return this.node === null || (isScalar(this.node) && String(this.node.value ?? '').trim() === '');
  }

  get isList(): boolean {
    return isSeq(this.node);
  }

  get isMap(): boolean {
    return isMap(this.node);
  }

  fail(said: Message): null {
    this.sheet.add(this.line, this.path, said);
    return null;
  }

  /** What stands here, short enough for a sentence. */
  get found(): string {
    if (isScalar(this.node)) return echo(String(this.node.value ?? ''));
    return isMap(this.node) ? '{...}' : isSeq(this.node) ? '[...]' : '';
  }

  /** The fields of a map; a key outside `allowed` is a problem that offers the nearest. Any key if `allowed` is null. */
  map(allowed: readonly string[] | null): ReadonlyMap<string, Field> {
    const fields = new Map<string, Field>();
    if (!isMap(this.node)) {
      if (!this.missing) this.fail(message('yaml.not-a-map', { found: this.found, allowed: allowed ?? [] }));
      return fields;
    }
    for (const pair of this.node.items) {
      const key = isScalar(pair.key) ? String(pair.key.value) : '';
      const line = lineOfNode(this.sheet, pair.key, this.line);
      const field = new Field(
        this.sheet,
        join(this.path, echo(key)),
        asNode(pair.value),
        lineOfNode(this.sheet, pair.value, line),
      );
      if (allowed === null || allowed.includes(key)) fields.set(key, field);
      else if (!this.sheet.full)
        this.sheet.add(
          line,
          field.path,
          /^\d/.test(key) && isMap(this.node) && this.node.flow === true
            ? message('yaml.comma', { found: echo(key) })
            : message('yaml.unknown-key', { found: echo(key), nearest: nearest(key, allowed), allowed }),
        );
    }
    return fields;
  }

  /** A field of a map read with `map`, also if it is not there. */
  of(fields: ReadonlyMap<string, Field>, key: string): Field {
    return fields.get(key) ?? new Field(this.sheet, join(this.path, key), null, this.line);
  }

  list(longest: number): readonly Field[] {
    if (!isSeq(this.node)) {
      if (!this.missing) this.fail(message('yaml.not-a-list', { found: this.found }));
      return [];
    }
    if (this.node.items.length > longest)
      this.fail(message('yaml.list-too-long', { found: this.node.items.length, longest }));
    return this.node.items
      .slice(0, longest)
      .map(
        (item, place) =>
          new Field(
            this.sheet,
            `${this.path}[${place + 1}]`,
            asNode(item),
            lineOfNode(this.sheet, item, this.line),
          ),
      );
  }

  /** The text that stands here, trimmed; null (and a problem) for a map, a list, or more than `longest` characters. */
  text(longest: number): string | null {
    if (!isScalar(this.node))
      return this.node === null ? null : this.fail(message('yaml.not-a-text', { found: this.found }));
    const text = String(this.node.value ?? '').trim();
    if (text.length > longest)
      return this.fail(message('yaml.text-too-long', { found: text.length, longest }));
    return text;
  }

  /** A plain number within a range; null where nothing stands, null and a problem for anything else. */
  number({ low, high, unit }: NumberRule): number | null {
    if (this.missing) return null;
    const read = isScalar(this.node) ? readNumber(String(this.node.value)) : null;
    if (read === null || read.word !== '' || !(read.value >= low && read.value <= high))
      return this.fail(message('yaml.number', { found: this.found, low, high, unit }));
    return read.value;
  }

  /** One of a few words; null where nothing stands, null and a problem for anything else. */
  choice<Word extends string>(allowed: readonly Word[]): Word | null {
    if (this.missing) return null;
    const found = isScalar(this.node) ? String(this.node.value).trim() : null;
    const word = allowed.find((one) => one === found?.toLowerCase());
    if (word !== undefined) return word;
    const near = found === null ? null : nearest(found, allowed);
    return this.fail(message('yaml.choice', { found: this.found, nearest: near, allowed }));
  }

  yesOrNo(): boolean | null {
    const word = this.choice(['true', 'false', 'yes', 'no'] as const);
    return word === null ? null : word === 'true' || word === 'yes';
  }

  /** A list of short words, or one of them alone. */
  words(longest: number): readonly string[] {
    if (this.missing) return [];
    const fields = isSeq(this.node) ? this.list(40) : [this];
    return fields.flatMap((field) => field.text(longest) ?? []).filter((word) => word !== '');
  }

  required(): boolean {
    if (!this.missing) return true;
    this.fail(message('yaml.missing'));
    return false;
  }
}

const join = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

const asNode = (value: unknown): Node | null =>
  isScalar(value) || isMap(value) || isSeq(value) ? (value as Node) : null;

const lineOfNode = (sheet: Sheet, value: unknown, otherwise: number): number => {
  const range = (value as { range?: readonly number[] | null } | null)?.range;
  return range?.[0] === undefined ? otherwise : sheet.lineOf(range[0]);
};

export type Opened = { readonly root: Field; readonly problems: readonly FileProblem[] };

/**
 * A YAML text as fields that know their line. Pure. Problems: more than 256 kB of text, not YAML, several documents,
 * aliases (so that no file can grow when it is read), more than 12 levels, nothing in it.
 * The problems of `root` grow while fields are asked.
 */
export const openDocument = (text: string, file: string): Opened => {
  const lines = new LineCounter();
  const sheet = new Sheet(file, lines);
  const refuse = (line: number, said: Message): Opened => {
    sheet.add(line, '', said);
    return { root: new Field(sheet, '', null, 1), problems: sheet.problems };
  };
  if (text.length > longestText)
    return refuse(1, message('yaml.too-long', { found: text.length, longest: longestText }));
  if (tooDeepToRead(text)) return refuse(1, message('yaml.too-deep'));
  const documents = parseAllDocuments(text, {
    lineCounter: lines,
    schema: 'failsafe',
    prettyErrors: false,
    strict: true,
    // The library compares each key with all before it; 20 000 keys would take seconds. `notAllowed` counts them once.
    uniqueKeys: false,
  });
  if (!Array.isArray(documents) || documents.length === 0) return refuse(1, message('yaml.empty'));
  const [document, second] = documents;
  if (document === undefined) return refuse(1, message('yaml.empty'));
  if (second !== undefined) return refuse(sheet.lineOf(second.range[0]), message('yaml.several-documents'));
  const wrong = document.errors[0] ?? document.warnings[0];
  if (wrong !== undefined)
    return refuse(sheet.lineOf(wrong.pos[0]), yamlMessages[wrong.code] ?? message('yaml.not-yaml'));
  const bad = notAllowed(document.contents, 0);
  if (bad !== null) return refuse(lineOfNode(sheet, bad.at, 1), bad.said);
  const contents = asNode(document.contents);
  if (contents === null || !isMap(contents)) return refuse(1, message('yaml.empty'));
  return { root: new Field(sheet, '', contents, 1), problems: sheet.problems };
};

/**
 * The version of the format: true if it is `1`. A missing one is a problem, a larger one says that the file was made
 * by a newer program.
 */
export const versionFits = (root: Field, fields: ReadonlyMap<string, Field>, key: string): boolean => {
  const field = root.of(fields, key);
  if (field.missing) {
    field.fail(message('yaml.no-version', { key }));
    return false;
  }
  const version = field.text(20);
  if (version === '1') return true;
  const newer = version !== null && /^\d+(\.\d+)?$/.test(version) && Number(version) > 1;
  field.fail(
    newer
      ? message('yaml.newer', { found: field.found })
      : message('yaml.wrong-version', { key, found: field.found }),
  );
  return false;
};
