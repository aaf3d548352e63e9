const GROUP_SEPARATOR = '\u001d';

const PLAIN: Record<string, string> = {
  QR_CODE: ']Q1',
  DATA_MATRIX: ']d1',
  CODE_128: ']C0',
  CODE_39: ']A0',
  EAN_13: ']E0',
  UPC_A: ']E0',
  ITF: ']I1',
};

/**
 * The AIM identifier (ISO/IEC 15424) and the bare data, from a decoder that does not report the identifier.
 *
 * Such a decoder shows a GS1 symbol's opening function character in the data: as `]C1` for Code 128 and as a separator for
 * a Data Matrix. It is taken off and told by the identifier instead. UPC-A is given its leading zero, so that it is the
 * 13-digit number every other reader reports.
 *
 * @example plainSymbology('DATA_MATRIX', '\u001d0109501101530003') // { symbology: ']d2', text: '0109501101530003' }
 */
export function plainSymbology(format: string | undefined, text: string): { text: string; symbology: string } {
  if (format === 'CODE_128' && text.startsWith(']C1')) return { symbology: ']C1', text: text.slice(3) };
  if (format === 'DATA_MATRIX' && text.startsWith(GROUP_SEPARATOR)) return { symbology: ']d2', text: text.slice(1) };
  if (format === 'UPC_A' && /^[0-9]{12}$/.test(text)) return { symbology: ']E0', text: `0${text}` };
  return { symbology: PLAIN[format ?? ''] ?? '', text };
}
