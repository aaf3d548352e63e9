import type { DemoAct } from '@/app/_server/demo/demo-shop';
import { changeMarks } from '@/app/_server/shapes/change-marks';
import type { DefectKind } from '@/shared/outline/defect';
import type { NewMark } from '@/shared/outline/piece-marks';
import { nanometres } from '@/shared/units/nanometres';

/** Places in millimetres: along the chalk line from the start, and from the line, left above zero. */
type Place = readonly [along: number, left: number];
type Decision = 'keep-out' | 'fill' | 'leave';

const point = ([along, left]: Place) => ({ x: along * 1000, y: left * 1000 });
const through = { face: 'through' } as const;

const round = (kind: DefectKind, centre: Place, radius: number, decision: Decision, note = ''): NewMark => ({
  is: 'defect',
  kind,
  place: { shape: 'circle', centre: point(centre), radius: radius * 1000 },
  depth: through,
  decision,
  note,
});
const drawn = (kind: DefectKind, ring: readonly Place[], decision: Decision, note = ''): NewMark => ({
  is: 'defect',
  kind,
  place: { shape: 'polygon', ring: ring.map(point) },
  depth: through,
  decision,
  note,
});
const shallow = (kind: DefectKind, centre: Place, radius: number, depth: number): NewMark => ({
  is: 'defect',
  kind,
  place: { shape: 'circle', centre: point(centre), radius: radius * 1000 },
  depth: { face: 'A', depth: nanometres(depth * 1e6) },
  decision: 'leave',
  note: '',
});
const band = (along: number, half: number): NewMark => ({
  is: 'strap',
  from: point([along, half]),
  to: point([along, -half]),
  note: 'Steel band',
});
const checked = (end: 'start' | 'end', depth: number): NewMark => ({
  is: 'end-check',
  end,
  depth: nanometres(depth * 1e6),
  note: '',
});

const MARKED: [daysAgo: number, key: string, marks: NewMark[]][] = [
  [
    117,
    'walnut 2',
    [
      round('knot', [1180, 120], 38, 'fill', 'Sound at the rim, loose in the middle.'),
      drawn(
        'bark inclusion',
        [
          [2640, -20],
          [2760, 6],
          [2905, -8],
          [2890, -44],
          [2740, -36],
        ],
        'fill',
        'Below the crotch.',
      ),
      checked('start', 60),
    ],
  ],
  [
    117,
    'walnut 3',
    [
      checked('end', 260),
      drawn(
        'check',
        [
          [2430, 18],
          [2860, 36],
          [2866, 26],
        ],
        'keep-out',
      ),
      round('knot', [880, -190], 24, 'leave'),
      shallow('stain', [1650, 90], 70, 3),
    ],
  ],
  [
    117,
    'walnut 4',
    [
      drawn(
        'break',
        [
          [820, 46],
          [1500, 24],
          [2180, 52],
          [2188, 40],
          [1500, 12],
          [826, 30],
        ],
        'fill',
        'Parted along the heart.',
      ),
      band(380, 405),
      band(2700, 415),
    ],
  ],
  [98, 'ash slab 2', [checked('end', 210), round('knot', [1450, 70], 19, 'leave')]],
  [
    22,
    'elm 2',
    [
      checked('start', 180),
      drawn(
        'bark inclusion',
        [
          [1320, 250],
          [1420, 268],
          [1530, 254],
          [1500, 226],
          [1380, 222],
        ],
        'fill',
      ),
      round('punk', [2050, -140], 42, 'keep-out', 'Soft under the point of a knife.'),
    ],
  ],
  [
    27,
    'sycamore slab 1',
    [
      round('hole', [620, 60], 4, 'keep-out', 'Fresh dust.'),
      round('hole', [655, 44], 4, 'keep-out'),
      round('hole', [1310, -80], 5, 'keep-out'),
    ],
  ],
];

/** What is wrong with the slabs and where: found when they were measured. */
export const DEMO_MARKS: readonly DemoAct[] = MARKED.map(([daysAgo, key, add]) => ({
  daysAgo,
  hour: 13,
  by: 'tobi',
  act: (shop) => shop.run(changeMarks, { label: shop.label(key), add, remove: [], why: '' }),
}));
