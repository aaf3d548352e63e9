/** What can be found wrong with a piece of work, as the trade names it (common practice). */
export const FAULT_KINDS = ['soft-spot', 'crack', 'bubbles', 'cloudy', 'delaminated', 'discoloured', 'other'] as const;

export type FaultKind = (typeof FAULT_KINDS)[number];

const WORDS: Readonly<Record<FaultKind, string>> = {
  'soft-spot': 'Soft spot',
  crack: 'Crack',
  bubbles: 'Bubbles',
  cloudy: 'Cloudy',
  delaminated: 'Come loose in layers',
  discoloured: 'Discoloured',
  other: 'Something else',
};

/** A kind of fault in words. `sayFault('soft-spot')` is "Soft spot". */
export const sayFault = (kind: FaultKind): string => WORDS[kind];

/** The kind a text names, or 'other'. */
export const faultKind = (text: string): FaultKind => FAULT_KINDS.find((kind) => kind === text) ?? 'other';
