import type { WoodFilter } from '@/app/_server/find/wood-filter';
import type { TypedFilter } from '@/app/(shop)/on-hand/ask';
import { parseLength } from '@/shared/units/parse-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The filter of the wood shelf as it is asked. A measure that does not read asks for nothing: its field says so. */
export function readFilter(typed: TypedFilter | undefined, prefer: UnitSystem): WoodFilter | undefined {
  if (!typed) return undefined;
  const least = (text: string, mode: 'length' | 'thickness') => {
    const read = parseLength(text, { prefer, mode });
    return read.ok ? read.value : undefined;
  };
  return {
    form: typed.form || undefined,
    species: typed.species || undefined,
    freeOnly: typed.free,
    leastThicknessNm: least(typed.thick, 'thickness'),
    leastLengthNm: least(typed.long, 'length'),
  };
}
