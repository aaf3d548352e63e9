import { logAir } from '@/app/_server/climate/log-air';
import { setSeason } from '@/app/_server/climate/set-season';
import type { DemoAct } from '@/app/_server/demo/demo-shop';
import { recordReadings } from '@/app/_server/stock/record-readings';

const MM = 1_000_000;

/** The usual air of a place from a month on: tenths of a degree and of a per cent. */
const SEASONS: [place: string, name: string, fromMonth: number, tenthsC: number, humidityTenths: number][] = [
  ['slab-barn', 'Cold half', 10, 120, 520],
  ['slab-barn', 'Warm half', 4, 200, 580],
  ['machine-room', 'Heated', 11, 180, 450],
  ['machine-room', 'Open doors', 5, 200, 560],
];

const LOGGED_DAYS = 56;

/** Places on a slab by meter: millimetres along and across, millimetres deep, and tenths of a per cent. */
const ROUNDS: [daysAgo: number, key: string, readings: [along: number, across: number, deep: number, mc: number][]][] =
  [
    [
      42,
      'walnut 2',
      [
        [620, 40, 12, 104],
        [1560, -30, 12, 108],
        [1560, -30, 28, 121],
        [2480, 10, 12, 106],
      ],
    ],
    [
      9,
      'walnut 2',
      [
        [620, 40, 12, 94],
        [1560, -30, 12, 97],
        [1560, -30, 28, 104],
        [2480, 10, 12, 95],
      ],
    ],
    [
      16,
      'elm 2',
      [
        [500, 60, 15, 196],
        [1250, -40, 15, 221],
        [1250, -40, 32, 262],
        [2000, 80, 15, 208],
      ],
    ],
  ];

/** The air of the barn and the machine room, and rounds with the meter over the slabs that matter. */
export const DEMO_ROOMS: readonly DemoAct[] = [
  {
    daysAgo: 238,
    hour: 10,
    by: 'maren',
    async act(shop) {
      for (const [place, name, fromMonth, tenthsC, humidityTenths] of SEASONS) {
        await shop.run(setSeason, { label: shop.label(place), name, fromMonth, tenthsC, humidityTenths });
      }
    },
  },
  ...ROUNDS.map(
    ([daysAgo, key, readings]): DemoAct => ({
      daysAgo,
      hour: 15,
      by: 'tobi',
      act: (shop) =>
        shop.run(recordReadings, {
          label: shop.label(key),
          takenOn: shop.on,
          meter: 'Pin meter, insulated pins',
          meterKind: 'pin',
          speciesSetting: key.startsWith('elm') ? 'Elm' : 'Walnut',
          readings: readings.map(([along, across, deep, mcTenths]) => ({
            mcTenths,
            spot: deep > 20 ? 'core' : 'shell',
            alongNm: along * MM,
            acrossNm: across * MM,
            depthNm: deep * MM,
          })),
        }),
    }),
  ),
  {
    daysAgo: 1,
    hour: 9,
    by: 'tobi',
    act: (shop) =>
      shop.run(logAir, {
        label: shop.label('slab-barn'),
        lines: Array.from({ length: LOGGED_DAYS }, (_, nr) => ({
          takenOn: shop.day(nr - LOGGED_DAYS),
          tenthsC: Math.round(118 + 22 * Math.sin(nr / 9) + 8 * Math.sin(nr * 1.7)),
          humidityTenths: Math.round(490 - 30 * Math.sin(nr / 9) + 22 * Math.cos(nr * 1.3)),
        })),
      }),
  },
];
