/** What was wanted where something was typed that could not be read. */
export type Wanted =
  | 'amount'
  | 'mass'
  | 'volume'
  | 'length'
  | 'altitude'
  | 'pressure'
  | 'humidity'
  | 'duration'
  | 'temperature';

/** What the sentence needs: the words found, and the units that would have been understood. */
export type Found = { readonly wanted: Wanted; readonly found: string; readonly allowed: readonly string[] };

/** Why a text could not be read: a message of the texts, by id and values. */
export type UnitProblem =
  | { readonly id: 'units.no-number'; readonly values: Found }
  | { readonly id: 'units.no-unit'; readonly values: Found }
  | { readonly id: 'units.unknown-unit'; readonly values: Found & { readonly unit: string } }
  | { readonly id: 'units.not-positive'; readonly values: Found }
  | { readonly id: 'units.comma'; readonly values: Found & { readonly either: readonly [string, string] } }
  | { readonly id: 'units.humidity-range'; readonly values: Found };

/** Something typed that could not be read as what was wanted. */
export type Unread = { readonly kind: 'problem'; readonly problem: UnitProblem };

export const unread = (problem: UnitProblem): Unread => ({ kind: 'problem', problem });
