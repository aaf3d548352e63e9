/** What a label is stuck on. A container is a tin or jug; a place is a shelf, cabinet or rack. */
export type LabelKind = 'container' | 'slab' | 'board' | 'sheet' | 'offcut' | 'place';

/** The words and the code of one label, before anyone has decided how large it is. */
export type LabelContent = {
  /** The code as people read and type it, dash included: `C-4K7QM2`. */
  readonly code: string;
  readonly kind: LabelKind;
  readonly title: string;
  /** Plain lines under the title. A line that ends in three or more underscores becomes a rule to write on. */
  readonly lines: readonly string[];
  /** A slab carries one label at each end, so that one may be lost with a cut or under a clamp. */
  readonly end?: { readonly of: 2; readonly nr: 1 | 2 };
};
