import type { PotLife } from '@/shared/pour/resin-sheet';
import type { Milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

/** Minutes, never longer than the sheet's own figure, and why it is less than to be relied on. */
export type PotLifeHere = {
  readonly minutes: number;
  /** The row of the sheet it is by. */
  readonly of: PotLife;
  /** `more-than-the-sheet`: more than was ever measured; it thickens sooner than `minutes`, by how much no rule says. */
  readonly cautions: readonly ('warmer-than-the-sheet' | 'more-than-the-sheet')[];
};

/**
 * How long a batch stays workable here. Of the sheet's rows the one counts whose mass is the least that is not below the
 * batch's, and of several of that mass the coolest that is not below the room; where every row is of less, the one of the
 * most. A larger mass heats itself more and thickens sooner, so what was measured with less promises nothing for more: pot
 * life and gel time are stated with the mass and temperature they were measured at (ISO 9514, ASTM D2471: by name, from
 * memory). In a room warmer than the row's the minutes are halved for every 10 °C (the rate of cure doubles per 10 °C:
 * Arrhenius rule of thumb that several makers print, published range 1.5 to 2.5; common practice); a cooler one is not
 * credited. The sheet goes before it. Undefined without a row. 40 minutes at 25 °C are 20 at 35 °C; of 40 minutes for
 * 100 g and 25 for 1 kg, 600 g have 25.
 */
export function potLifeAt(
  rows: readonly PotLife[] | undefined,
  { room, mass }: { room: TenthsCelsius; mass: Milligrams },
): PotLifeHere | undefined {
  const row = rowFor(rows ?? [], { room, mass });
  if (!row) return undefined;
  const warmer = Math.max(0, room - row.at) / 100;
  return {
    minutes: Math.floor(row.minutes / 2 ** warmer),
    of: row,
    cautions: [
      ...(warmer > 0 ? (['warmer-than-the-sheet'] as const) : []),
      ...(mass > row.mass ? (['more-than-the-sheet'] as const) : []),
    ],
  };
}

function rowFor(rows: readonly PotLife[], { room, mass }: { room: TenthsCelsius; mass: Milligrams }) {
  const masses = rows.map((row) => row.mass);
  const enough = masses.filter((each) => each >= mass);
  const wanted = enough.length > 0 ? Math.min(...enough) : Math.max(...masses);
  const same = rows.filter((row) => row.mass === wanted).sort((a, b) => a.at - b.at);
  return same.find(({ at }) => at >= room) ?? same.at(-1);
}
