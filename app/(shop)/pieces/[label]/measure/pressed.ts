import { cellLength } from '@/app/(shop)/pieces/[label]/measure/cell-length';
import { nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import type { UnitSystem } from '@/shared/units/unit-system';

const FRACTIONS = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'] as const;
type StationKey = (typeof FRACTIONS)[number] | '+1/16' | '′' | '″' | 'mm' | '−';

const CROSSED = { key: '−', says: 'The edge is across the line' } as const;

/** The keys beside the digits, each with what it does in words. */
export const STATION_KEYS: Record<UnitSystem, readonly { readonly key: StationKey; readonly says: string }[]> = {
  imperial: [
    ...FRACTIONS.map((key) => ({ key, says: `Add ${key}` })),
    { key: '+1/16', says: 'One sixteenth more' },
    { key: '′', says: 'Feet' },
    { key: 'mm', says: 'Millimetres' },
    CROSSED,
  ],
  metric: [{ key: '″', says: 'Inches' }, CROSSED],
};

const SIXTEENTH = 25_400_000 / 16;

/** The text of a field after one of the keys. `12` and `3/8` is `12 3/8`; `12 3/8` and `+1/16` is `12 7/16`; `40` and `−` is `-40`. */
export function pressed(text: string, key: StationKey): string {
  const typed = text.trim();
  if (key === '−') return /^[-−]/.test(typed) ? typed.slice(1) : `-${typed}`;
  if (key === '′') return `${typed}' `;
  if (key === '″') return `${typed}"`;
  if (key === 'mm') return /mm$/.test(typed) ? typed : `${typed} mm`;
  if (key === '+1/16') {
    const isBelow = /^[-−]/.test(typed);
    const read = parseLength((isBelow ? typed.slice(1) : typed) || '0', { prefer: 'imperial' });
    if (!read.ok) return text;
    return `${isBelow ? '-' : ''}${cellLength(nanometres(read.value + SIXTEENTH), 'imperial')}`;
  }
  // A fraction takes the place of one that stands there.
  const whole = typed
    .replace(/(^|[\s'])\d+\/\d+"?$/, '$1')
    .replace(/"$/, '')
    .trimEnd();
  return whole === '' ? key : `${whole} ${key}`;
}
