/** One line of the ledger: what changed on one thing, from what, to what. */
export type MovementFacts = {
  readonly quantityDelta: number;
  readonly placeFromId: number | null;
  readonly placeToId: number | null;
  readonly conditionFrom: string;
  readonly conditionTo: string;
  readonly holdFrom: string;
  readonly holdTo: string;
  readonly jobFromId: number | null;
  readonly jobToId: number | null;
  readonly openedFrom: string | null;
  readonly openedTo: string | null;
};

/** What somebody wants changed; what is not named stays as it is. */
export type Change = {
  readonly quantityDelta?: number;
  readonly placeId?: number | null;
  readonly condition?: string;
  readonly hold?: string;
  readonly jobId?: number | null;
  readonly opened?: string | null;
};
