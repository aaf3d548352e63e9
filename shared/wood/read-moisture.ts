import { err, ok, type Result } from '@/shared/result/result';

export type MoistureError = { readonly code: 'empty' | 'not-a-number' | 'finer-than-the-meter' | 'absurd' };

/** Above this share of water to dry wood no reading is believed; the wettest green sapwood stays below it (common practice). */
const MOST_TENTHS = 2500;

/**
 * Reads a moisture content as a meter shows it, per cent of the dry weight, into whole tenths of a per cent: `11.4`,
 * `11,4 %`, `9`. One decimal at most, 0 to 250 %. `readMoisture('11.4 %')` is 114.
 */
export function readMoisture(text: string): Result<number, MoistureError> {
  const typed = text.trim();
  if (typed === '') return err({ code: 'empty' });
  const found = /^(\d{1,4})(?:[.,](\d*))?\s*%?$/.exec(typed);
  if (!found) return err({ code: 'not-a-number' });
  const decimals = (found[2] ?? '').replace(/0+$/, '');
  if (decimals.length > 1) return err({ code: 'finer-than-the-meter' });
  const tenths = Number(found[1]) * 10 + Number(decimals || 0);
  return tenths > MOST_TENTHS ? err({ code: 'absurd' }) : ok(tenths);
}

/** What is wrong with a typed moisture reading and what to type instead. */
export function sayMoistureError({ code }: MoistureError): string {
  switch (code) {
    case 'empty':
      return 'Type what the meter shows, for example 11.4.';
    case 'not-a-number':
      return 'This does not read as a per cent. Type what the meter shows, for example 11.4.';
    case 'finer-than-the-meter':
      return 'One decimal is enough, for example 11.4.';
    case 'absurd':
      return 'No wood reads over 250 %. Check the number.';
  }
}
