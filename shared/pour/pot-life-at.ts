import type { PotLife } from '@/shared/pour/resin-sheet';
import type { Milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

/** Minutes, never longer than the sheet's own figure, and why it is less than to be relied on. */
export type PotLifeHere = {
  readonly minutes: number;
  readonly cautions: readonly ('warmer-than-the-sheet' | 'more-than-the-sheet')[];
};

/**
 * How long a batch stays workable here: the sheet's minutes, halved for every 10 °C the room is warmer than the sheet's
 * own (the rate of cure doubles per 10 °C: Arrhenius rule of thumb that several makers print, published range 1.5 to 2.5;
 * common practice). Cooler rooms are not credited, and a mass above the sheet's shortens it by an amount no rule gives:
 * both are cautions, and the sheet goes before them. 40 minutes at 25 °C are 20 at 35 °C.
 */
export function potLifeAt(sheet: PotLife, { room, mass }: { room: TenthsCelsius; mass: Milligrams }): PotLifeHere {
  const warmer = Math.max(0, room - sheet.at) / 100;
  return {
    minutes: Math.floor(sheet.minutes / 2 ** warmer),
    cautions: [
      ...(warmer > 0 ? (['warmer-than-the-sheet'] as const) : []),
      ...(mass > sheet.mass ? (['more-than-the-sheet'] as const) : []),
    ],
  };
}
