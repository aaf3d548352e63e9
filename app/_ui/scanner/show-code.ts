/**
 * A code's content for eyes: the group separators of GS1, which have no shape, become a thin mark, and other control
 * characters a dot. For showing only; never read it back.
 *
 * @example showCode('10AB-12\u001d17261231') // '10AB-12 ▏17261231'
 */
export function showCode(text: string): string {
  return [...text]
    .map((character) => {
      const number = character.codePointAt(0) ?? 0;
      if (number === 0x1d) return ' ▏';
      return number < 32 || number === 127 ? '·' : character;
    })
    .join('');
}
