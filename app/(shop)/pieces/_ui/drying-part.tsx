'use client';

import Link from 'next/link';
import { useDeferredValue, useMemo, useState } from 'react';
import type { AirOfPlace } from '@/app/_server/climate/read-air';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { type Reason, ReasonList } from '@/app/_ui/verdict/reason-list';
import { DryingChart } from '@/app/(shop)/pieces/_ui/drying-chart';
import { type Figure, FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { PlaceAir } from '@/app/(shop)/pieces/_ui/place-air';
import { RoomFields } from '@/app/(shop)/pieces/_ui/room-fields';
import { useRemembered } from '@/app/(shop)/pieces/_ui/use-remembered';
import type { PartProps } from '@/app/(shop)/pieces/_ui/weight-part';
import { type RoomRead, readRoom } from '@/app/(shop)/pieces/read-room';
import { roomOfPlace } from '@/app/(shop)/pieces/room-of-place';
import { type SayDays, sayForecast, sayGain } from '@/app/(shop)/pieces/say-drying';
import { type PieceDrying, workOutDrying } from '@/app/(shop)/pieces/work-out-drying';
import { DRY_ENOUGH } from '@/app/(shop)/pieces/work-out-weight';
import { sayDate } from '@/shared/calendar/say-date';
import type { UnitSystem } from '@/shared/units/unit-system';
import { humidityForMoisture } from '@/shared/wood/humidity-for-moisture';
import { takenAs } from '@/shared/wood/moisture-reading';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';
import { sayDryingRefusal } from '@/shared/wood/say-drying-refusal';
import { sayReadingCaution } from '@/shared/wood/say-reading-caution';
import { saySteadiness } from '@/shared/wood/say-steadiness';
import type { ReadingSummary } from '@/shared/wood/summarise-readings';

/** What the readings say, whether the piece has come to rest, and when it will be dry enough where it stands. */
export function DryingPart({
  piece,
  species,
  air,
  prefer,
  today,
  order,
}: PartProps & SayDays & { air: AirOfPlace | undefined }) {
  const days = { today, order };
  const [room, setRoom] = useRemembered(
    `room.${piece.placeLabel ?? 'nowhere'}`,
    { temperature: '', humidity: '', target: String(DRY_ENOUGH) },
    'room',
  );
  const [other, setOther] = useState({ temperature: '', humidity: '' });
  const known = useMemo(() => roomOfPlace(air, today), [air, today]);
  const typed = readRoom(known ? other : room, prefer);
  const isOther = typed.emc !== undefined;
  // What is typed wins over what the place says, once it reads.
  const read: RoomRead = known && !isOther ? { ...known.read, problems: typed.problems } : typed;
  const typedTarget = readMoisture(room.target);
  const targetTenths = typedTarget.ok ? typedTarget.value : DRY_ENOUGH * 10;
  const target = useDeferredValue(targetTenths) / 10;
  const emc = useDeferredValue(read.emc?.value.mc);
  const speciesId = species?.id ?? null;
  const drying = useMemo(
    () => workOutDrying(piece, { targetTenths: Math.round(target * 10), emc, speciesId, today }),
    [piece, target, emc, speciesId, today],
  );
  const { forecast } = drying;
  const said = forecast?.ok ? sayForecast(forecast.value.value, target, days) : undefined;
  const refusal = forecast && !forecast.ok ? sayDryingRefusal(forecast.error) : undefined;
  const gain = drying.gain && sayGain(drying.gain, days);
  const damp = forecast && !forecast.ok && forecast.error.code === 'room-too-damp' && read.temperature;
  const drier = damp ? humidityForMoisture(damp, target) : undefined;

  return (
    <Fold title="Drying" now={sayNow(drying, days)}>
      <div className={styles.part}>
        {said ? <p className={styles.headline}>{said.headline}</p> : null}
        {said?.sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {refusal ? (
          <ReasonList
            label="Why there is no date"
            reasons={[{ id: 'refusal', word: 'care', sentence: refusal.says, toDo: refusal.todo }]}
          />
        ) : null}
        {drier?.ok ? (
          <p>
            At this temperature the air would have to hold below {Math.floor(drier.value.value)} % humidity for wood to
            settle under {target} %.
          </p>
        ) : null}
        {drying.series.length > 0 && !forecast ? (
          <p>
            Give the air of the room it stands in, and it says when the piece will be dry enough. What is noted on the
            page of the place counts for every piece in it.
          </p>
        ) : null}
        {gain ? <p className={styles.soft}>{gain}</p> : null}
        {drying.series.length > 0 ? (
          <DryingChart drying={drying} target={target} emc={emc} today={today} order={order} />
        ) : null}
        <div>
          {known ? (
            <PlaceAir known={known} isOther={isOther} prefer={prefer} days={days}>
              <RoomFields room={other} read={typed} prefer={prefer} onChange={setOther} />
            </PlaceAir>
          ) : (
            <>
              <RoomFields room={room} read={read} prefer={prefer} onChange={(next) => setRoom({ ...room, ...next })} />
              <p className={styles.soft}>
                Where it stands{piece.place ? `: ${piece.place}` : ''}. The usual of the coming weeks, not of this hour.
                This device remembers it.{' '}
                {piece.placeLabel ? <Link href={`/places/${piece.placeLabel}`}>Note it for the place</Link> : null}
              </p>
            </>
          )}
          <TextField
            label="Dry enough at, %"
            inputMode="decimal"
            maxLength={8}
            value={room.target}
            onChange={(next) => setRoom({ ...room, target: next })}
            error={typedTarget.ok ? undefined : sayMoistureError(typedTarget.error)}
          />
        </div>
        {drying.summary ? <p>{saySummary(drying.summary, days)}</p> : null}
        {drying.summary ? (
          <ReasonList label="What its readings say" reasons={readingReasons(drying, prefer, days)} />
        ) : null}
        <FigureList prefer={prefer} figures={dryingFigures(drying, read.emc, days)} />
        {read.emc?.value.beyondTable ? (
          <p className={styles.soft}>Colder or hotter than the handbook’s own table: the formula is stretched.</p>
        ) : null}
      </div>
    </Fold>
  );
}

function sayNow({ summary, forecast }: PieceDrying, { today, order }: SayDays): string {
  if (!summary) return 'never read';
  const likely = forecast?.ok && !forecast.value.value.reached ? forecast.value.value.dates.likely : null;
  const wettest = `${takenAs(summary.wettest) / 10} %`;
  return likely && likely >= today ? `${wettest}, dry enough about ${sayDate(likely, { order, today })}` : wettest;
}

function saySummary({ on, readings, wettest, driest, coreTenths, shellTenths }: ReadingSummary, days: SayDays): string {
  const day = sayDate(on, days);
  const most = `${takenAs(wettest) / 10} %`;
  const depths =
    coreTenths === null || shellTenths === null
      ? ''
      : ` Its core reads ${coreTenths / 10} %, its shell ${shellTenths / 10} %.`;
  if (readings.length === 1) return `Read once on ${day}: ${most}.`;
  if (takenAs(driest) === takenAs(wettest))
    return `Read ${readings.length} times on ${day}, each time ${most}.${depths}`;
  return `Read ${readings.length} times on ${day}: ${takenAs(driest) / 10} to ${most}. The wettest counts, not the mean.${depths}`;
}

function readingReasons({ summary, steadiness }: PieceDrying, prefer: UnitSystem, days: SayDays): Reason[] {
  const steady = steadiness && saySteadiness(steadiness, days);
  return [
    ...(steadiness && steady
      ? [
          {
            id: 'steady',
            word: steadiness.state === 'steady' ? ('use' as const) : ('care' as const),
            sentence: steady.says,
            toDo: steady.todo,
          },
        ]
      : []),
    ...(summary?.cautions ?? []).map((caution, index) => {
      const { says, todo } = sayReadingCaution(caution, prefer);
      return { id: `${caution.code} ${index}`, word: 'care' as const, sentence: says, toDo: todo };
    }),
  ];
}

function dryingFigures({ forecast }: PieceDrying, emc: RoomRead['emc'], days: SayDays): Figure[] {
  const likely = forecast?.ok ? forecast.value.value.dates.likely : null;
  return [
    ...(emc ? [{ term: 'The room settles wood at, EMC', value: `${emc.value.mc.toFixed(1)} %`, how: emc.how }] : []),
    ...(forecast?.ok
      ? [
          {
            term: 'Forecast',
            value: forecast.value.value.reached ? 'there now' : likely ? sayDate(likely, days) : 'no date',
            how: forecast.value.how,
          },
        ]
      : []),
  ];
}
