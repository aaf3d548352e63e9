/**
 * The GS1 check digit of the digits before it: weights 3, 1, 3... from the right, sum made up to a multiple of ten.
 * Serves GTIN-8/12/13/14, GLN, SSCC, GSIN and GSRN alike. The caller passes digits only.
 *
 * Source: GS1 General Specifications 7.9.1, standard check digit calculation.
 * `gtinCheckDigit('629104150021')` is `3`.
 */
export function gtinCheckDigit(digitsBefore: string): number {
  let sum = 0;
  for (let index = 0; index < digitsBefore.length; index++) {
    const weight = (digitsBefore.length - index) % 2 === 1 ? 3 : 1;
    sum += weight * (digitsBefore.charCodeAt(index) - 48);
  }
  return (10 - (sum % 10)) % 10;
}
