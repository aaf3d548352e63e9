/** The characters a component may hold: N digits, X CSET 82, Y CSET 39, Z base64url. */
export type ComponentType = 'N' | 'X' | 'Y' | 'Z';

/** One part of an AI's value, as the dictionary cuts it. A part of fixed length has `shortest === longest`. */
export type AiComponent = {
  readonly type: ComponentType;
  readonly shortest: number;
  readonly longest: number;
  readonly optional: boolean;
  readonly checks: readonly string[];
};

/** What the dictionary says of one Application Identifier. */
export type AiEntry = {
  readonly ai: string;
  readonly title: string;
  /** True where no FNC1 separator follows, because the length is predefined. */
  readonly predefined: boolean;
  /** True where the AI may stand in the query of a Digital Link URI. */
  readonly attribute: boolean;
  readonly components: readonly AiComponent[];
  /** Every rule must hold; a rule holds when all AIs of one of its groups are present. `n` stands for any digit. */
  readonly needs: readonly (readonly (readonly string[])[])[];
  /** AIs and patterns that may not stand with this one. */
  readonly excludes: readonly string[];
  /** Ordered qualifiers, one list for each alternative, where this AI is a key of a Digital Link URI. */
  readonly qualifiers?: readonly (readonly string[])[];
};
