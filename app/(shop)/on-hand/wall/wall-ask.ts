import type { WallAsk } from '@/app/_server/stock/slabs-on-wall';
import { parseLength } from '@/shared/units/parse-length';
import type { UnitSystem } from '@/shared/units/unit-system';

const WALL_ORDERS = ['largest', 'thickest', 'species', 'newest'] as const satisfies readonly WallAsk['order'][];

/** The wall as its address asks for it, each as it was typed. */
export type TypedWall = { species: string; thick: string; free: boolean; order: WallAsk['order'] };

type Given = Record<string, string | string[] | undefined>;

const one = (value: string | string[] | undefined) => ((Array.isArray(value) ? value[0] : value) ?? '').slice(0, 80);

/** Reads the address; what does not read asks for nothing, and `wrong` says that the thickness did not. */
export function readWallAsk(given: Given, prefer: UnitSystem): { typed: TypedWall; ask: WallAsk; wrong: boolean } {
  const typed: TypedWall = {
    species: one(given.species),
    thick: one(given.thick),
    free: one(given.free) === 'yes',
    order: WALL_ORDERS.find((order) => order === one(given.order)) ?? 'largest',
  };
  const thick = typed.thick.trim() === '' ? undefined : parseLength(typed.thick, { prefer, mode: 'thickness' });
  return {
    typed,
    ask: {
      species: typed.species || undefined,
      leastThicknessNm: thick?.ok ? thick.value : undefined,
      freeOnly: typed.free,
      order: typed.order,
    },
    wrong: thick !== undefined && !thick.ok,
  };
}
