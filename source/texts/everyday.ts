/** What people say in place of the word that is wanted, split by "|", a star for any ending; and what to type, as a sentence. */
type Saying = readonly [said: string, sentence: string];

/** The sayings of one language. */
export type Everyday = {
  /** Somebody may be hurt: looked for anywhere in the line, before a word that is only mistyped. */
  readonly urgent: readonly Saying[];
  readonly others: readonly Saying[];
};

type Pattern = { readonly alone: RegExp; readonly within: RegExp; readonly sentence: string };

const patternOf = ([said, sentence]: Saying): Pattern => {
  const words = said.replaceAll('*', '\\p{L}*');
  return {
    alone: new RegExp(`^(?:${words})$`, 'u'),
    within: new RegExp(`(?<!\\p{L})(?:${words})(?!\\p{L})`, 'u'),
    sentence,
  };
};

/**
 * What to say to somebody who typed everyday words; null where there are none, or where `nearest`, a word of the console
 * that differs by a letter or two, is the better guess. Made ready when it is first asked for.
 */
export const everydayIn = (sayings: Everyday): ((typed: string, nearest: string | null) => string | null) => {
  let ready: { readonly urgent: readonly Pattern[]; readonly others: readonly Pattern[] } | null = null;
  return (typed, nearest) => {
    ready ??= { urgent: sayings.urgent.map(patternOf), others: sayings.others.map(patternOf) };
    const { urgent, others } = ready;
    const line = typed
      .toLowerCase()
      .replaceAll(/[^\p{L}\p{N}' ]+/gu, ' ')
      .trim();
    const found =
      urgent.find(({ within }) => within.test(line)) ??
      others.find(({ alone }) => alone.test(line)) ??
      (nearest === null ? others.find(({ within }) => within.test(line)) : undefined);
    return found?.sentence ?? null;
  };
};
