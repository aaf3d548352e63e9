/** A piece, and the other half of its bookmatched pair where it has one. */
type MaybePaired<Label extends string> = {
  readonly label: Label;
  readonly pairedWith: { readonly label: Label; readonly inStock: boolean } | null;
};

/**
 * The pairs that would be split if these pieces, and no others, went to one use: each piece with the half that would stay
 * behind. A half that is no longer in the shop splits nothing. Of A paired with B, taken alone, it is A with B; taken
 * together, none.
 */
export function pairSplitBy<Label extends string>(
  pieces: readonly MaybePaired<Label>[],
): { readonly label: Label; readonly stays: Label }[] {
  const going = new Set(pieces.map(({ label }) => label));
  return pieces.flatMap(({ label, pairedWith }) =>
    pairedWith?.inStock && !going.has(pairedWith.label) ? [{ label, stays: pairedWith.label }] : [],
  );
}
