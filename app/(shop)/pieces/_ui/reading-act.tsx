'use client';

import { useRef, useState } from 'react';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { Fold } from '@/app/_ui/fold';
import { Key } from '@/app/_ui/keys';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { kindOf, MeterFields, type TypedMeter } from '@/app/(shop)/pieces/_ui/meter-fields';
import styles from '@/app/(shop)/pieces/_ui/reading-act.module.css';
import { ReadingDrawing } from '@/app/(shop)/pieces/_ui/reading-drawing';
import { ReadingRows } from '@/app/(shop)/pieces/_ui/reading-rows';
import { useRemembered } from '@/app/(shop)/pieces/_ui/use-remembered';
import { readingAction } from '@/app/(shop)/pieces/actions';
import { freshReading, readingsAlong, typedPlace } from '@/app/(shop)/pieces/typed-reading';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import type { Outline } from '@/shared/outline/outline';
import type { Point } from '@/shared/outline/point';
import type { Nanometres } from '@/shared/units/nanometres';
import type { UnitSystem } from '@/shared/units/unit-system';
import { METER_KIND_WORDS, meterKindOf } from '@/shared/wood/meter-words';
import { readMoisture } from '@/shared/wood/read-moisture';

export interface ReadingActProps {
  label: string;
  today: CalendarDate;
  order: DateOrder;
  prefer: UnitSystem;
  now: string;
  /** The meter used last on it, in words. */
  meter: string;
  length: Nanometres;
  /** To tap on; undefined where there is nothing to draw. */
  outline: Outline | undefined;
}

/** How many places are asked for at once. */
const ALONG = 5;

/** Writes moisture readings, one or a whole round: a number is enough, the rest is folded and remembered. */
export function ReadingAct({ label, today, order, prefer, now, meter, length, outline }: ReadingActProps) {
  const [rows, setRows] = useState([freshReading()]);
  const [active, setActive] = useState(0);
  const [takenOn, setTakenOn] = useState(sayDate(today, { order }));
  const [woodTemperature, setWoodTemperature] = useState('');
  const [typed, setTyped] = useRemembered<TypedMeter>('meter', {
    kind: meterKindOf(meter),
    meter: '',
    speciesSetting: '',
    correctsItself: '',
  });
  const list = useRef<HTMLOListElement>(null);
  const read = rows.flatMap(({ moisture }) => {
    const mc = readMoisture(moisture);
    return mc.ok ? [mc.value] : [];
  });
  const depth = rows.at(-1)?.depth ?? '';

  function goTo(at: number) {
    setActive(at);
    // The field is there once the row is drawn.
    requestAnimationFrame(() => list.current?.children[at]?.querySelector('input')?.focus());
  }
  function add(place = {}) {
    setRows([...rows, { ...freshReading(depth), ...place }]);
    goTo(rows.length);
  }
  function tap(point: Point) {
    const place = typedPlace(point, prefer);
    const row = rows[active];
    if (row?.along && row.moisture.trim() !== '') {
      const empty = rows.findIndex(({ moisture, along }) => moisture.trim() === '' && along === '');
      if (empty < 0) return add(place);
      setRows(rows.map((each, at) => (at === empty ? { ...each, ...place } : each)));
      return goTo(empty);
    }
    setRows(rows.map((each, at) => (at === active ? { ...each, ...place } : each)));
    goTo(active);
  }

  return (
    <Fold group="act" title="Read its moisture" now={now}>
      <ActForm
        action={readingAction}
        input={{
          label,
          takenOn,
          ...typed,
          kind: kindOf(typed),
          correctsItself: typed.correctsItself !== '',
          woodTemperature,
          readings: rows,
        }}
        words={
          read.length > 1
            ? `Write ${read.length} readings`
            : read[0] === undefined
              ? 'Write the reading'
              : `Write ${read[0] / 10} %`
        }
        done={read.length > 1 ? `${read.length} readings are in the book.` : 'The reading is in the book.'}
        onDone={() => {
          setRows([freshReading()]);
          setActive(0);
          setTakenOn(sayDate(today, { order }));
        }}
      >
        {(errors) => (
          <>
            {outline ? <ReadingDrawing outline={outline} rows={rows} prefer={prefer} onTap={tap} /> : null}
            <ReadingRows
              rows={rows}
              active={active}
              prefer={prefer}
              errors={errors}
              list={list}
              onActive={setActive}
              onChange={(at, row) => setRows(rows.map((each, nr) => (nr === at ? row : each)))}
            />
            {rows.length > 1 ? <p className={styles.soft}>What stays empty is not written.</p> : null}
            <div className={styles.keys}>
              {rows.length < MOST_AT_ONCE ? (
                <Key variant="ghost" onClick={() => add()}>
                  One more
                </Key>
              ) : null}
              {rows.length === 1 && length > 0 ? (
                <Key
                  variant="ghost"
                  onClick={() => {
                    const moisture = rows[0]?.moisture ?? '';
                    setRows(
                      readingsAlong(length, ALONG, prefer, depth).map((row, at) =>
                        at === 0 ? { ...row, moisture } : row,
                      ),
                    );
                    goTo(0);
                  }}
                >
                  Five along it
                </Key>
              ) : null}
            </div>
            <Fold
              title="Meter, wood temperature, day"
              now={[METER_KIND_WORDS[kindOf(typed)], typed.speciesSetting && `set to ${typed.speciesSetting}`, takenOn]
                .filter(Boolean)
                .join(', ')}
              open={errors.takenOn || errors.woodTemperature || errors.meter ? true : undefined}
            >
              <MeterFields
                typed={typed}
                onChange={setTyped}
                woodTemperature={woodTemperature}
                onTemperature={setWoodTemperature}
                shows={read[0]}
                prefer={prefer}
                errors={errors}
              />
              <DateTextField
                label="Read on"
                today={today}
                order={order}
                aim="past"
                value={takenOn}
                onChange={setTakenOn}
                error={errors.takenOn}
              />
            </Fold>
          </>
        )}
      </ActForm>
    </Fold>
  );
}
