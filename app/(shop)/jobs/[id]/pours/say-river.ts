import type { KeptRiver } from '@/app/_server/pours/kept-river';
import { onTheRule } from '@/app/(shop)/on-hand/fits/on-the-rule';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printQuantity } from '@/shared/units/print-quantity';
import { microlitres } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

type Say = { units: UnitSystem; order: DateOrder; today: CalendarDate };

const SQUARE_INCH = 645.16;

/** `River between S-5Q2YBG and S-3AM78B`, or in the one that is sawn. */
export function sayRiverOf({ labels }: Pick<KeptRiver, 'labels'>): string {
  const [one = '', two] = labels.map((label) => printOwnLabel(label as OwnLabelCode));
  return two === undefined ? `River in ${one}, sawn down its length` : `River between ${one} and ${two}`;
}

/** Where it is from and how wide it is: `River between …, searched on 25 Nov.` */
export function sayRiverFrom(river: Pick<KeptRiver, 'labels' | 'searchedOn'>, { order, today }: Say): string {
  return `${sayRiverOf(river)}, searched on ${sayDate(river.searchedOn, { order, today })}.`;
}

/** `84 mm to 190 mm wide, 2,410 cm² by both outlines.` */
export function sayRiverSize({ narrowest, widest, area, labels }: KeptRiver, { units }: Pick<Say, 'units'>): string {
  const [least, most] = [onTheRule(narrowest, 'down', units), onTheRule(widest, 'up', units)];
  const metric = units === 'metric';
  const square = Math.round(area / (metric ? 100 : SQUARE_INCH)).toLocaleString('en');
  const wide = least === most ? least : `${least} to ${most}`;
  return `${wide} wide, ${square} ${metric ? 'cm²' : 'in²'} by ${labels.length > 1 ? 'both outlines' : 'its outline'}.`;
}

/** `5.56 L at the finished 40 mm.` */
export function sayRiverHolds({ area, finished }: Pick<KeptRiver, 'area' | 'finished'>, units: UnitSystem): string {
  const holds = microlitres(Math.round(area * (finished / 1e6)));
  const deep = printLength(finished, { prefer: units, style: 'inches' });
  return `${printQuantity(holds, 'uL', { prefer: units })} at the finished ${deep}, before leakage and what stays in the buckets.`;
}

/** How deep it is poured and what that is. */
export function sayRiverDepth(
  depth: Nanometres,
  { finished, thickest, labels }: Pick<KeptRiver, 'finished' | 'thickest' | 'labels'>,
  units: UnitSystem,
): string {
  const said = printLength(depth, { prefer: units, style: 'inches' });
  if (depth === finished) return `${said}, the finished thickness`;
  if (depth !== thickest) return `${said}, as typed`;
  return `${said}, ${labels.length > 1 ? 'the thicker slab' : 'the slab'} as it was measured`;
}

/** `Banks of 1,520 mm and 1,480 mm, as deep as the river.` */
export function sayBanks({ banks }: Pick<KeptRiver, 'banks'>, units: UnitSystem): string {
  const [one, two] = banks.map((length) =>
    printLength(nanometres(length * 1_000_000), { prefer: units, style: 'inches' }),
  );
  return `Banks of ${one} and ${two}, as deep as the river.`;
}
