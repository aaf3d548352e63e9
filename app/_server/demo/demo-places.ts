import { teachCode } from '@/app/_server/codes/teach-code';
import type { DemoAct } from '@/app/_server/demo/demo-shop';
import { addPlace, type PlaceKind } from '@/app/_server/places/add-place';
import { noteTemperature } from '@/app/_server/places/note-temperature';

const TREE: [name: string, says: string, kind: PlaceKind, inside?: string][] = [
  ['resin-room', 'Resin room', 'room'],
  ['cabinet-1', 'Cabinet 1', 'cabinet', 'resin-room'],
  ['cabinet-1-top', 'Top shelf', 'shelf', 'cabinet-1'],
  ['cabinet-1-low', 'Low shelf', 'shelf', 'cabinet-1'],
  ['pour-bench', 'Pouring bench', 'bench', 'resin-room'],
  ['finish-room', 'Finishing room', 'room'],
  ['cabinet-2', 'Cabinet 2, flammables', 'cabinet', 'finish-room'],
  ['finish-shelf', 'Finish shelf', 'shelf', 'finish-room'],
  ['machine-room', 'Machine room', 'room'],
  ['glue-shelf', 'Glue shelf', 'shelf', 'machine-room'],
  ['board-rack', 'Board rack', 'rack', 'machine-room'],
  ['offcut-bin', 'Offcut bin', 'shelf', 'machine-room'],
  ['slab-barn', 'Slab barn', 'room'],
  ['slab-rack-a', 'Slab rack A', 'rack', 'slab-barn'],
  ['slab-rack-b', 'Slab rack B', 'rack', 'slab-barn'],
  ['sheet-bay', 'Sheet bay', 'rack', 'slab-barn'],
  ['lean-to', 'Lean-to', 'outside'],
  ['lean-to-shelf', 'Back shelf', 'shelf', 'lean-to'],
];

/** Rooms, racks, shelves and cabinets; and one frosty night in the lean-to. */
export const DEMO_PLACES: readonly DemoAct[] = [
  {
    daysAgo: 240,
    hour: 9,
    by: 'maren',
    async act(shop) {
      for (const [key, name, kind, inside] of TREE) {
        const { label } = await shop.run(addPlace, { name, kind, parentLabel: inside && shop.label(inside) });
        shop.keep(key, label);
      }
      await shop.run(teachCode, { code: 'CAB-2-DOOR', means: { placeLabel: shop.label('cabinet-2') } });
    },
  },
  {
    daysAgo: 9,
    hour: 8,
    by: 'tobi',
    act: (shop) => shop.run(noteTemperature, { label: shop.label('lean-to'), leastTenthsC: -35, mostTenthsC: 110 }),
  },
];
