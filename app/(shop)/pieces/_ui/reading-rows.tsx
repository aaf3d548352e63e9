'use client';

import type { RefObject } from 'react';
import { TextField } from '@/app/_ui/field/text-field';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import styles from '@/app/(shop)/pieces/_ui/reading-act.module.css';
import { readAcross } from '@/app/(shop)/pieces/read-across';
import type { TypedReading } from '@/app/(shop)/pieces/typed-reading';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';

export interface ReadingRowsProps {
  rows: readonly TypedReading[];
  active: number;
  prefer: UnitSystem;
  errors: Readonly<Record<string, string | undefined>>;
  list: RefObject<HTMLOListElement | null>;
  onActive: (at: number) => void;
  onChange: (at: number, row: TypedReading) => void;
}

/** A field for each reading; where it was taken opens under it. */
export function ReadingRows({ rows, active, prefer, errors, list, onActive, onChange }: ReadingRowsProps) {
  return (
    <ol ref={list} className={styles.rows}>
      {rows.map((row, at) => {
        const error = (name: string) => errors[`readings.${at}.${name}`];
        const set = (name: keyof TypedReading) => (value: string) => onChange(at, { ...row, [name]: value });
        const mc = readMoisture(row.moisture);
        const across = readAcross(row.across, prefer);
        const misplaced = error('along') ?? error('across') ?? error('depth');
        return (
          <li
            // biome-ignore lint/suspicious/noArrayIndexKey: rows are appended, never moved.
            key={at}
            className={styles.row}
            data-active={at === active || undefined}
            onFocusCapture={() => onActive(at)}
          >
            <TextField
              label={rows.length > 1 ? `Reading ${at + 1}, %` : 'Moisture, %'}
              hint={rows.length > 1 ? undefined : 'As the meter shows it, set to this wood. The wettest place counts.'}
              inputMode="decimal"
              value={row.moisture}
              onChange={set('moisture')}
              maxLength={10}
              echo={mc.ok || row.moisture.trim() === '' ? null : { ok: false, says: sayMoistureError(mc.error) }}
              error={error('moisture')}
            />
            <details className={styles.where} open={misplaced ? true : undefined}>
              <summary>{sayPlace(row)}</summary>
              <LengthField
                label="Along, from the start"
                optional
                prefer={prefer}
                value={row.along}
                onChange={set('along')}
                error={error('along')}
              />
              <TextField
                label="Across, from the middle line"
                hint="Left or right of it, looking along: 120 left."
                optional
                maxLength={40}
                value={row.across}
                onChange={set('across')}
                echo={across && !across.ok ? { ok: false, says: sayLengthError(across.error, { prefer }) } : null}
                error={error('across')}
              />
              <LengthField
                label="Depth"
                hint="How deep the tips of the pins stand."
                optional
                prefer={prefer}
                value={row.depth}
                onChange={set('depth')}
                error={error('depth')}
              />
              <TextField
                label="In words"
                hint="Near the knot, sapwood, face B."
                optional
                value={row.spot}
                onChange={set('spot')}
                maxLength={120}
                error={error('spot')}
              />
            </details>
          </li>
        );
      })}
    </ol>
  );
}

function sayPlace({ along, across, depth, spot }: TypedReading): string {
  const said = [
    along.trim() && `${along.trim()} along`,
    across.trim() && `${across.trim()} of the line`,
    depth.trim() && `${depth.trim()} deep`,
    spot.trim(),
  ];
  return said.filter(Boolean).join(', ') || 'Where on it';
}
