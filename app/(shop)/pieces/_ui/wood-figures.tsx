'use client';

import type { AirOfPlace } from '@/app/_server/climate/read-air';
import { DryingPart } from '@/app/(shop)/pieces/_ui/drying-part';
import { FlatteningPart } from '@/app/(shop)/pieces/_ui/flattening-part';
import { MovementPart } from '@/app/(shop)/pieces/_ui/movement-part';
import { SizePart } from '@/app/(shop)/pieces/_ui/size-part';
import { SpeciesChoice, useSpecies } from '@/app/(shop)/pieces/_ui/species-choice';
import { WeightPart } from '@/app/(shop)/pieces/_ui/weight-part';
import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { SpeciesMeant } from '@/shared/wood/species-meant';

export interface WoodFiguresProps {
  piece: FiguredPiece;
  meant: SpeciesMeant;
  /** The air it stands in, as far as the book knows it. */
  air: AirOfPlace | undefined;
  prefer: UnitSystem;
  today: CalendarDate;
  order: DateOrder;
}

/** What can be reckoned of a piece from what the book knows of it. A sheet is made dry and flat: only its size and weight are asked. */
export function WoodFigures({ piece, meant, air, prefer, today, order }: WoodFiguresProps) {
  const [species, choose] = useSpecies(piece.wood, meant);
  const parts = { piece, species, prefer };
  if (piece.form === 'sheet') {
    return (
      <>
        <SizePart piece={piece} prefer={prefer} />
        <WeightPart {...parts} today={today} order={order} />
      </>
    );
  }
  const choice = (
    <SpeciesChoice
      label={piece.label}
      wood={piece.wood}
      meant={meant}
      species={species}
      order={order}
      onChoose={choose}
    />
  );
  if (piece.form === 'pack') {
    return (
      <>
        {choice}
        <DryingPart {...parts} air={air} today={today} order={order} />
      </>
    );
  }
  return (
    <>
      {choice}
      <SizePart piece={piece} prefer={prefer} />
      <WeightPart {...parts} today={today} order={order} />
      <DryingPart {...parts} air={air} today={today} order={order} />
      <MovementPart key={piece.sawn} {...parts} air={air} />
      <FlatteningPart {...parts} />
    </>
  );
}
