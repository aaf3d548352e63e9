const OWN_CODE = /^([A-Z])-?([0-9A-Z]{6})$/;

/**
 * The text a two-dimensional symbol carries for an own code: the code without its dash, seven capital letters and digits.
 * Only the shape is looked at, because the symbol's size is fixed for it; another shape is a bug in the caller and throws.
 *
 * @example labelSymbolText('C-4K7QM2') // 'C4K7QM2'
 */
export function labelSymbolText(code: string): string {
  const shaped = labelCodeOf(code);
  if (shaped === undefined) throw new Error(`Not the shape of an own label code: ${JSON.stringify(code)}`);
  return shaped.replace('-', '');
}

/**
 * A typed or linked code as it stands on the label, in capitals and with its dash, or `undefined` when it has another shape.
 * The check character is not looked at: the book knows the code or does not.
 *
 * @example labelCodeOf(' c4k7qm2 ') // 'C-4K7QM2'
 */
export function labelCodeOf(text: string): string | undefined {
  const parts = OWN_CODE.exec(text.trim().toUpperCase());
  return parts ? `${parts[1]}-${parts[2]}` : undefined;
}
