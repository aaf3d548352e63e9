'use client';

import { useId, useRef, useState } from 'react';
import { FieldError } from '@/app/_ui/field/field-shell';
import { Key } from '@/app/_ui/keys';
import styles from '@/app/(shop)/pieces/[label]/measure/_ui/measure.module.css';
import { StationCell } from '@/app/(shop)/pieces/[label]/measure/_ui/station-cell';
import { StationKeys } from '@/app/(shop)/pieces/[label]/measure/_ui/station-keys';
import {
  EMPTY_STATION,
  inOrder,
  STATION_VALUES,
  type TypedStation,
  valueKey,
} from '@/app/(shop)/pieces/[label]/measure/chalk';
import type { StationValue } from '@/shared/outline/station';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface StationRowsProps {
  rows: readonly TypedStation[];
  /** Which gap these are the stations of; the slab's own where it is left out. */
  gap?: number;
  problems: Readonly<Record<string, string>>;
  /** A value that looks like a slip. */
  doubt: string | undefined;
  prefer: UnitSystem;
  onChange: (rows: readonly TypedStation[]) => void;
}

const WORDS = { at: 'Along', left: 'Left', right: 'Right' } as const;
const LONG_WORDS = { at: 'along the line', left: 'to the left edge', right: 'to the right edge' } as const;

/** Rows of three numbers. Enter goes on to the next field, and from the last one to a new row. */
export function StationRows({ rows, gap, problems, doubt, prefer, onChange }: StationRowsProps) {
  const id = useId();
  const list = useRef<HTMLOListElement>(null);
  const [focused, setFocused] = useState<{ row: number; value: StationValue['value']; typing?: boolean }>();
  const goTo = (row: number, value: StationValue['value']) =>
    // After the new row is drawn.
    requestAnimationFrame(() => {
      const field = list.current?.querySelector<HTMLInputElement>(`[data-cell="${row}.${value}"]`);
      field?.focus();
      field?.select();
    });
  const change = (row: number, value: StationValue['value'], text: string) =>
    onChange(rows.map((station, nr) => (nr === row ? { ...station, [value]: text } : station)));

  const goOn = (row: number, value: StationValue['value']) => {
    const next = STATION_VALUES[STATION_VALUES.indexOf(value) + 1];
    if (next) return goTo(row, next);
    if (row === rows.length - 1) onChange([...rows, EMPTY_STATION]);
    goTo(row + 1, 'at');
  };
  return (
    <>
      <div className={styles.head} aria-hidden="true">
        {STATION_VALUES.map((value) => (
          <span key={value}>
            {WORDS[value]} <small>{prefer === 'metric' ? 'mm' : 'in'}</small>
          </span>
        ))}
      </div>
      <ol className={styles.rows} ref={list}>
        {rows.map((station, row) => {
          const wrong = STATION_VALUES.flatMap((value) => {
            const key = valueKey({ ...(gap !== undefined && { gap }), station: row, value });
            // A number that is still being typed is not judged yet.
            const isBeingTyped = focused?.typing && focused.row === row && focused.value === value;
            return problems[key] && !isBeingTyped ? [{ key, says: problems[key], value }] : [];
          });
          const doubted = STATION_VALUES.find((value) => doubt === valueKey({ station: row, value }));
          const error = wrong[0];
          const said = error ? `${id}-${row}` : doubted ? `${id}-${row}-doubt` : undefined;
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place down the line; fields keep no state of their own.
            <li key={row} className={styles.row}>
              {STATION_VALUES.map((value) => {
                const isWrong = wrong.some((one) => one.value === value);
                return (
                  <StationCell
                    key={value}
                    cell={`${row}.${value}`}
                    label={`${gap === undefined ? 'Station' : `Gap ${gap + 1}, station`} ${row + 1}, ${LONG_WORDS[value]}`}
                    value={station[value]}
                    isWrong={isWrong}
                    isDoubted={doubted === value}
                    said={isWrong || doubted === value ? said : undefined}
                    onType={(text) => {
                      setFocused({ row, value, typing: true });
                      change(row, value, text);
                    }}
                    onEnter={() => goOn(row, value)}
                    onFocus={() => setFocused({ row, value })}
                    onBlur={() => setFocused((was) => was && { ...was, typing: false })}
                  />
                );
              })}
              <button
                type="button"
                className={styles.out}
                aria-label={`Take station ${row + 1} out`}
                onClick={() => onChange(rows.length > 1 ? rows.filter((_, nr) => nr !== row) : [EMPTY_STATION])}
              >
                <span aria-hidden="true">×</span>
              </button>
              {error ? (
                <div className={styles.says}>
                  <FieldError id={`${id}-${row}`}>{error.says}</FieldError>
                </div>
              ) : doubted ? (
                <p id={`${id}-${row}-doubt`} className={styles.says} role="status">
                  {doubted === 'at' ? 'This' : `The ${doubted} side`} looks far off its neighbours. Measure it once
                  more.
                </p>
              ) : null}
              {focused?.row === row ? (
                <StationKeys
                  text={station[focused.value]}
                  prefer={prefer}
                  onChange={(text) => change(row, focused.value, text)}
                  onNext={() => goOn(row, focused.value)}
                />
              ) : null}
            </li>
          );
        })}
      </ol>
      <div className={styles.more}>
        <Key
          variant="ghost"
          onClick={() => {
            onChange([...rows, EMPTY_STATION]);
            goTo(rows.length, 'at');
          }}
        >
          Next station
        </Key>
        {rows.length > 1 ? (
          <Key variant="ghost" onClick={() => onChange(inOrder(rows, prefer))}>
            Put in order
          </Key>
        ) : null}
      </div>
    </>
  );
}
