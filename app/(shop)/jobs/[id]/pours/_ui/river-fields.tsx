'use client';

import Link from 'next/link';
import type { KeptRiver } from '@/app/_server/pours/kept-river';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { FieldError } from '@/app/_ui/field/field-shell';
import { TextField } from '@/app/_ui/field/text-field';
import { RiverDrawing } from '@/app/_ui/slab/river-drawing';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { sayRiverDepth, sayRiverFrom, sayRiverOf, sayRiverSize } from '@/app/(shop)/jobs/[id]/pours/say-river';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { parseLength } from '@/shared/units/parse-length';
import { printLength } from '@/shared/units/print-length';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';

interface RiverFieldsProps {
  /** Undefined where its slabs give it no more. */
  river: KeptRiver | undefined;
  jobId: number;
  depth: string;
  setDepth: (text: string) => void;
  error: (field: string) => string | undefined;
  today: CalendarDate;
  order: DateOrder;
  units: UnitSystem;
}

/** A river that was searched for: its picture, where it is from, and how deep it is poured. */
export function RiverFields({ river, jobId, depth, setDepth, error, today, order, units }: RiverFieldsProps) {
  const fault = error('river');
  if (!river) {
    return (
      <p className={styles.defer} role="status">
        That river is not there any more. What you typed is still here:{' '}
        <Link href={`/on-hand/fits?make=river&job=${jobId}`}>search for another</Link>, or give the size another way.
      </p>
    );
  }
  const read = parseLength(depth, { prefer: units });
  const thicker = river.thickest > river.finished;
  const say = { units, order, today };
  const said = (length: typeof river.finished) => printLength(length, { prefer: units, style: 'inches' });
  return (
    <>
      {fault ? <FieldError id="river-error">{fault}</FieldError> : null}
      <figure className={styles.river}>
        <RiverDrawing river={river} label={`The finished top, to scale: ${sayRiverOf(river)}`} />
        <figcaption>
          {sayRiverFrom(river, say)} {sayRiverSize(river, say)}{' '}
          <Link href={`/on-hand/fits?${river.asked}&job=${jobId}`}>See the search</Link>
        </figcaption>
      </figure>
      {thicker ? (
        <ChoiceChips
          label="As deep as"
          options={[
            { value: 'finished', label: said(river.finished), hint: 'finished: flattened before it is poured' },
            {
              value: 'thickest',
              label: said(river.thickest),
              hint: `the ${river.labels.length > 1 ? 'slabs' : 'slab'} now: flattened afterwards`,
            },
          ]}
          value={
            read.ok && read.value === river.thickest
              ? 'thickest'
              : read.ok && read.value === river.finished
                ? 'finished'
                : ''
          }
          onChange={(value) =>
            setDepth(printLengthExact(value === 'thickest' ? river.thickest : river.finished, units))
          }
        />
      ) : null}
      <TextField
        label="Depth of the river"
        hint={
          read.ok && read.value > 0 ? `Used: ${sayRiverDepth(read.value, river, units)}.` : 'How deep the resin stands.'
        }
        value={depth}
        onChange={setDepth}
        error={error('riverDepth')}
      />
    </>
  );
}
