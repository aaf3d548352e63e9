import type { Figure } from '@/app/(shop)/pieces/_ui/figure-list';
import type { HomeAir } from '@/app/(shop)/pieces/home-air';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { TopMovement } from '@/shared/wood/top-movement';

/** A movement as a size, whichever way it goes. */
export function sayMove(length: Nanometres, prefer: UnitSystem): string {
  return printLength(nanometres(Math.abs(length)), { prefer, denominator: 32 });
}

/** How far a top moves and how far its screws have to travel, as numbers that open to how they were reckoned. */
export function movementFigures(top: TopMovement, home: HomeAir, prefer: UnitSystem): readonly Figure[] {
  const size = (length: Nanometres) => sayMove(length, prefer);
  return [
    { term: 'Shrinks from the day it is fixed', value: size(top.shrinks.value), how: top.shrinks.how },
    { term: 'Grows from the day it is fixed', value: size(top.grows.value), how: top.grows.how },
    { term: 'Free slot towards the fixed line', value: size(top.slot.inward.value), how: top.slot.inward.how },
    { term: 'Free slot away from it', value: size(top.slot.outward.value), how: top.slot.outward.how },
    { term: 'Wood settles in the dry season at', value: `${home.dry.value.mc.toFixed(1)} %`, how: home.dry.how },
    { term: 'Wood settles in the damp season at', value: `${home.damp.value.mc.toFixed(1)} %`, how: home.damp.how },
  ];
}
