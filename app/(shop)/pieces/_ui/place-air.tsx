import Link from 'next/link';
import type { ReactNode } from 'react';
import { Fold } from '@/app/_ui/fold';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import type { RoomOfPlace } from '@/app/(shop)/pieces/room-of-place';
import type { SayDays } from '@/app/(shop)/pieces/say-drying';
import { sayAir, sayBasis } from '@/app/(shop)/places/say-room';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface PlaceAirProps {
  known: RoomOfPlace;
  /** Another air is typed, and is reckoned with. */
  isOther: boolean;
  prefer: UnitSystem;
  days: SayDays;
  /** The fields for another air. */
  children: ReactNode;
}

/** The air of the place a piece stands in, as the book knows it, and fields for another one to try. */
export function PlaceAir({ known, isOther, prefer, days, children }: PlaceAirProps) {
  return (
    <>
      <p>
        {isOther ? 'Reckoned with the air typed below, not with ' : 'Reckoned with '}
        <Link href={`/places/${known.of.label}`}>the air of {known.of.name}</Link>: {sayAir(known.air, prefer)}.
      </p>
      <p className={styles.soft}>{sayBasis(known, days)}</p>
      <Fold title="Try another air">
        {children}
        <p className={styles.soft}>
          The usual of the coming weeks, where it would stand. Empty both fields to go back to the air of the place.
        </p>
      </Fold>
    </>
  );
}
