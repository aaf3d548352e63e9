/** One appended line of promises: so much more of a thing promised to a job above zero, released or used below. */
export type PromiseLine = {
  /** Lines are numbered in the order they were written. */
  readonly id: number;
  readonly jobId: number;
  readonly stockId: number;
  /** What of the job it is for; null where that was not said. */
  readonly needId: number | null;
  /** A whole number of the thing's small unit, never 0. */
  readonly delta: number;
  /** The line that this one undoes. */
  readonly reversesId?: number | null | undefined;
};

/** What still stands of a line that promised something. */
export type StandingPromise = Omit<PromiseLine, 'delta' | 'reversesId'> & {
  /** Above 0. */
  readonly amount: number;
};
