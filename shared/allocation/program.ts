/** A linear programme over variables of at least 0, to be made least. */
export type Program = {
  readonly minimise: readonly Term[];
  readonly rows: readonly Row[];
  /** Upper bounds of variables; one without has none. */
  readonly most: ReadonlyMap<string, number>;
  readonly whole: ReadonlySet<string>;
};

export type Term = { readonly name: string; readonly times: number };
export type Row = { readonly terms: readonly Term[]; readonly sense: '<=' | '>=' | '='; readonly bound: number };

/** What a solver made of a programme. */
export type ProgramAnswer =
  /** `best` is proved; `some` is a solution found within the time, and `bound` says how much better one could still be. */
  | {
      readonly status: 'best' | 'some';
      readonly value: number;
      readonly bound: number;
      readonly values: ReadonlyMap<string, number>;
    }
  | { readonly status: 'impossible' }
  | { readonly status: 'out-of-time'; readonly bound: number };

/**
 * Solves a programme in the CPLEX-LP text form. The solver is handed in, so that these rules need none. It must keep to
 * `closeEnough`: a solution may be called best when none can be better by more than that.
 */
export type SolveProgram = (
  lpText: string,
  options: {
    readonly timeLimitSeconds: number;
    readonly closeEnough: number;
    /** Values that solve it already, to begin from. */
    readonly from?: ReadonlyMap<string, number> | undefined;
  },
) => Promise<ProgramAnswer>;
