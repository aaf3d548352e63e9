/**
 * A whole number of 10⁻ᵈⁱᵍⁱᵗˢ as a decimal with a point, without needless zeros. Thousands are grouped by commas when
 * asked. A true minus sign stands before what is below zero. `decimalText(1840n, 3)` is `1.84`.
 */
export function decimalText(count: bigint, digits: number, grouping: 'grouped' | 'plain' = 'plain'): string {
  const size = String(count < 0n ? -count : count).padStart(digits + 1, '0');
  const whole = size.slice(0, size.length - digits);
  const fraction = size.slice(size.length - digits).replace(/0+$/, '');
  const shown = grouping === 'grouped' ? whole.replace(/\B(?=(?:\d{3})+$)/g, ',') : whole;
  return `${count < 0n ? '−' : ''}${shown}${fraction ? `.${fraction}` : ''}`;
}
