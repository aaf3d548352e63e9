/** A refusal in words for people: what happened, what was kept, what to do. */
export type Problem = {
  readonly code: string;
  readonly what: string;
  readonly kept: string;
  readonly todo: string;
  /** A sentence to stand beside each named field of a form. */
  readonly fields?: Readonly<Record<string, string>>;
};

/** What an action tells the screen. `replayed`: the same press had been written before, and this is its first answer. */
export type Answer<A> =
  | { readonly ok: true; readonly answer: A; readonly replayed: boolean }
  | { readonly ok: false; readonly problem: Problem };
