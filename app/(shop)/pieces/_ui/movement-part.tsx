'use client';

import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { type Figure, FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { LengthField, typedLength } from '@/app/(shop)/pieces/_ui/length-field';
import { NoFigure } from '@/app/(shop)/pieces/_ui/no-figure';
import { useRemembered } from '@/app/(shop)/pieces/_ui/use-remembered';
import type { PartProps } from '@/app/(shop)/pieces/_ui/weight-part';
import { newestReadings } from '@/app/(shop)/pieces/figured-piece';
import { readRoom } from '@/app/(shop)/pieces/read-room';
import { sayTopTrouble } from '@/app/(shop)/pieces/say-trouble';
import { cutOf, TOP_CUTS, type TopCut, workOutTop } from '@/app/(shop)/pieces/work-out-top';
import { DRY_ENOUGH } from '@/app/(shop)/pieces/work-out-weight';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printLengthExact } from '@/shared/units/print-length-exact';
import { WETTEST_TENTHS } from '@/shared/wood/judge-piece';
import { takenAs } from '@/shared/wood/moisture-reading';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';
import { sayTopNote } from '@/shared/wood/say-top-note';

const CUT_WORDS: Record<TopCut, { label: string; hint?: string }> = {
  flat: { label: 'Flat sawn' },
  quarter: { label: 'Quarter sawn' },
  mixed: { label: 'Mixed' },
  unknown: { label: 'Not known', hint: 'counts as flat' },
};
/** A heated house in a temperate country over the year. Common practice. */
const USUAL_HOUSE = { dry: '30', damp: '60' };

/** How much a top of this piece moves over the year where it will live, and how far its screws must be able to travel. */
export function MovementPart({ piece, species, prefer }: PartProps) {
  const newest = newestReadings(piece);
  const isDry = newest !== null && takenAs(newest.wettest) <= WETTEST_TENTHS;
  const [width, setWidth] = useState(printLengthExact(piece.size.middle, prefer));
  const [cut, setCut] = useState<TopCut>('unknown');
  const [quarter, setQuarter] = useState('50');
  const [fixed, setFixed] = useState(String(isDry ? takenAs(newest.wettest) / 10 : DRY_ENOUGH));
  const [home, setHome] = useRemembered('home', { ...USUAL_HOUSE, temperature: prefer === 'metric' ? '20' : '68' });
  const dry = readRoom({ temperature: home.temperature, humidity: home.dry }, prefer);
  const damp = readRoom({ temperature: home.temperature, humidity: home.damp }, prefer);
  const mc = readMoisture(fixed);
  const wide = typedLength(width, prefer);
  const quarterPercent = /^\d{1,3}$/.test(quarter.trim()) && Number(quarter) <= 100 ? Number(quarter) : undefined;
  const top =
    wide && mc.ok && dry.emc && damp.emc && quarterPercent !== undefined
      ? workOutTop(species, {
          width: wide,
          cut: cutOf(cut, quarterPercent),
          fixedMc: mc.value / 10,
          driestMc: dry.emc.value.mc,
          dampestMc: damp.emc.value.mc,
        })
      : undefined;
  const say = (length: Nanometres) => printLength(length, { prefer, denominator: 32 });
  const size = (length: Nanometres) => say(length < 0 ? (-length as Nanometres) : length);
  const moves = top?.ok ? size(top.value.betweenSeasons) : undefined;
  const figures: Figure[] =
    top?.ok && dry.emc && damp.emc
      ? [
          {
            term: 'Shrinks from the day it is fixed',
            value: size(top.value.shrinks.value),
            how: top.value.shrinks.how,
          },
          { term: 'Grows from the day it is fixed', value: size(top.value.grows.value), how: top.value.grows.how },
          {
            term: 'Free slot towards the fixed line',
            value: size(top.value.slot.inward.value),
            how: top.value.slot.inward.how,
          },
          {
            term: 'Free slot away from it',
            value: size(top.value.slot.outward.value),
            how: top.value.slot.outward.how,
          },
          { term: 'Wood settles in the dry season at', value: `${dry.emc.value.mc.toFixed(1)} %`, how: dry.emc.how },
          { term: 'Wood settles in the damp season at', value: `${damp.emc.value.mc.toFixed(1)} %`, how: damp.emc.how },
        ]
      : [];
  return (
    <Fold title="As a top" now={moves ? `moves ${moves} over the year` : undefined}>
      <div className={styles.part}>
        {moves ? (
          <p className={styles.headline}>
            Moves <span className={styles.whole}>{moves}</span> across its width between {home.dry.trim()} and{' '}
            {home.damp.trim()} % humidity.
          </p>
        ) : null}
        {top && !top.ok ? (
          <NoFigure said={sayTopTrouble(top.error, species?.name ?? piece.wood)} label="Movement" />
        ) : null}
        <div>
          <LengthField label="Width of the top" prefer={prefer} value={width} onChange={setWidth} />
          <ChoiceChips
            label="How it was sawn"
            options={TOP_CUTS.map((value) => ({ value, ...CUT_WORDS[value] }))}
            value={cut}
            onChange={(value) => setCut(TOP_CUTS.find((each) => each === value) ?? 'unknown')}
          />
          {cut === 'mixed' ? (
            <TextField
              label="Quarter sawn, % of the width"
              inputMode="numeric"
              maxLength={3}
              value={quarter}
              onChange={setQuarter}
              error={quarterPercent === undefined ? 'Give a whole number from 0 to 100.' : undefined}
            />
          ) : null}
          <div className={styles.pair}>
            <TextField
              label="Driest air, %"
              inputMode="decimal"
              maxLength={8}
              value={home.dry}
              onChange={(next) => setHome({ ...home, dry: next })}
              error={dry.problems.humidity}
            />
            <TextField
              label="Dampest air, %"
              inputMode="decimal"
              maxLength={8}
              value={home.damp}
              onChange={(next) => setHome({ ...home, damp: next })}
              error={damp.problems.humidity}
            />
          </div>
          <div className={styles.pair}>
            <TextField
              label={`Room, ${prefer === 'metric' ? '°C' : '°F'}`}
              inputMode="decimal"
              maxLength={12}
              value={home.temperature}
              onChange={(next) => setHome({ ...home, temperature: next })}
              error={dry.problems.temperature}
            />
            <TextField
              label="Wood fixed at, %"
              inputMode="decimal"
              maxLength={8}
              value={fixed}
              onChange={setFixed}
              error={mc.ok ? undefined : sayMoistureError(mc.error)}
            />
          </div>
          <p className={styles.soft}>
            Relative humidity over the year where the piece will live: 30 to 60 % is a heated house, by common practice.
            {isDry
              ? ' The wood is taken as it reads now.'
              : ` The wood is taken as dried to ${DRY_ENOUGH} %, not as it is now.`}{' '}
            Along the grain it hardly moves.
          </p>
        </div>
        {figures.length ? <FigureList figures={figures} prefer={prefer} /> : null}
        {top?.ok ? (
          <>
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
