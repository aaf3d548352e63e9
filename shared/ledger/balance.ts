/** What a movement can be about. */
export type StockKind = 'lot' | 'container' | 'piece';

/** How one thing stands after all its movements. Ids are the store's. */
export type Balance = {
  readonly kind: StockKind;
  /** Exact integer of the product's small unit (mg, µL, pieces); 1 or 0 for a piece; 0 for a lot. */
  readonly quantity: number;
  readonly placeId: number | null;
  /** Conditions in alphabetical order, comma between; '' is sound. */
  readonly condition: string;
  readonly hold: string;
  readonly jobId: number | null;
  /** `YYYY-MM-DD/known` or `YYYY-MM-DD/guessed`; null while sealed. */
  readonly opened: string | null;
};

/** How a thing stands before its first movement. */
export function emptyBalance(kind: StockKind): Balance {
  return { kind, quantity: 0, placeId: null, condition: '', hold: 'free', jobId: null, opened: null };
}
