'use client';

import { useState } from 'react';
import type { AirOfPlace } from '@/app/_server/climate/read-air';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { HomeFields, type TypedHome } from '@/app/(shop)/pieces/_ui/home-fields';
import { LengthField, typedLength } from '@/app/(shop)/pieces/_ui/length-field';
import { NoFigure } from '@/app/(shop)/pieces/_ui/no-figure';
import { SawnFields } from '@/app/(shop)/pieces/_ui/sawn-fields';
import { useRemembered } from '@/app/(shop)/pieces/_ui/use-remembered';
import type { PartProps } from '@/app/(shop)/pieces/_ui/weight-part';
import { newestReadings } from '@/app/(shop)/pieces/figured-piece';
import { airAsTyped, airBySeasons } from '@/app/(shop)/pieces/home-air';
import { movementFigures, sayMove } from '@/app/(shop)/pieces/movement-figures';
import { sayTopTrouble } from '@/app/(shop)/pieces/say-trouble';
import { cutOf, type TopCut, workOutTop } from '@/app/(shop)/pieces/work-out-top';
import { DRY_ENOUGH } from '@/app/(shop)/pieces/work-out-weight';
import { printLengthExact } from '@/shared/units/print-length-exact';
import { WETTEST_TENTHS } from '@/shared/wood/judge-piece';
import { takenAs } from '@/shared/wood/moisture-reading';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';
import { sayTopNote } from '@/shared/wood/say-top-note';

/** A heated house in a temperate country over the year. Common practice. */
const USUAL_HOUSE = { dry: '30', damp: '60' };

/** How much a top of this piece moves over the year where it will live, and how far its screws must be able to travel. */
export function MovementPart({ piece, species, prefer, air }: PartProps & { air: AirOfPlace | undefined }) {
  const newest = newestReadings(piece);
  const isDry = newest !== null && takenAs(newest.wettest) <= WETTEST_TENTHS;
  const [width, setWidth] = useState(printLengthExact(piece.size.middle, prefer));
  const [cut, setCut] = useState<TopCut>(piece.sawn || 'unknown');
  const [quarter, setQuarter] = useState('50');
  const [fixed, setFixed] = useState(String(isDry ? takenAs(newest.wettest) / 10 : DRY_ENOUGH));
  const [home, setHome] = useRemembered<TypedHome>('home', {
    ...USUAL_HOUSE,
    temperature: prefer === 'metric' ? '20' : '68',
  });
  const seasons = airBySeasons(air);
  const [where, setWhere] = useState<'seasons' | 'typed'>('seasons');
  const year = seasons && where === 'seasons' ? seasons : airAsTyped(home, prefer);
  const mc = readMoisture(fixed);
  const wide = typedLength(width, prefer);
  const quarterPercent = /^\d{1,3}$/.test(quarter.trim()) && Number(quarter) <= 100 ? Number(quarter) : undefined;
  const top =
    wide && mc.ok && year && quarterPercent !== undefined
      ? workOutTop(species, {
          width: wide,
          cut: cutOf(cut, quarterPercent),
          fixedMc: mc.value / 10,
          driestMc: year.dry.value.mc,
          dampestMc: year.damp.value.mc,
        })
      : undefined;
  const moves = top?.ok ? sayMove(top.value.betweenSeasons, prefer) : undefined;
  return (
    <Fold title="As a top" now={moves ? `moves ${moves} over the year` : undefined}>
      <div className={styles.part}>
        {moves && year ? (
          <p className={styles.headline}>
            Moves <span className={styles.whole}>{moves}</span> across its width between {year.says}.
          </p>
        ) : null}
        {top && !top.ok ? (
          <NoFigure said={sayTopTrouble(top.error, species?.name ?? piece.wood)} label="Movement" />
        ) : null}
        <div>
          <LengthField label="Width of the top" prefer={prefer} value={width} onChange={setWidth} />
          <SawnFields
            label={piece.label}
            kept={piece.sawn}
            cut={cut}
            onCut={setCut}
            quarter={quarter}
            onQuarter={setQuarter}
            isQuarterRead={quarterPercent !== undefined}
          />
          {seasons && air ? (
            <ChoiceChips
              label="Where it will live"
              options={[
                { value: 'seasons', label: air.of.name, hint: 'by its seasons' },
                { value: 'typed', label: 'Another room' },
              ]}
              value={where}
              onChange={(value) => setWhere(value === 'typed' ? 'typed' : 'seasons')}
            />
          ) : null}
          {seasons && where === 'seasons' ? null : <HomeFields home={home} prefer={prefer} onChange={setHome} />}
          <TextField
            label="Wood fixed at, %"
            inputMode="decimal"
            maxLength={8}
            value={fixed}
            onChange={setFixed}
            error={mc.ok ? undefined : sayMoistureError(mc.error)}
          />
          <p className={styles.soft}>
            {seasons && where === 'seasons'
              ? 'The driest and the dampest of its seasons. '
              : 'Relative humidity over the year where the piece will live: 30 to 60 % is a heated house, by common practice. '}
            {isDry
              ? 'The wood is taken as it reads now.'
              : `The wood is taken as dried to ${DRY_ENOUGH} %, not as it is now.`}{' '}
            Along the grain it hardly moves.
          </p>
        </div>
        {top?.ok && year ? (
          <>
            <FigureList figures={movementFigures(top.value, year, prefer)} prefer={prefer} />
            <p className={styles.soft}>
              The slots are for the screws farthest from the fixed line, half the width away, beyond the screw itself.
            </p>
            <ul className={styles.notes}>
              {top.value.notes.map((note) => (
                <li key={note}>{sayTopNote(note)}</li>
              ))}
            </ul>
          </>
        ) : null}
      </div>
    </Fold>
  );
}
