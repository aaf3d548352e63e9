'use client';

import { useState } from 'react';
import type { WeighedAgain } from '@/app/_server/stock/weigh-container';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import type { Echo } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { DayItWas } from '@/app/(shop)/_parts/acts/day-it-was';
import { sayBroken } from '@/app/(shop)/_parts/acts/say-broken';
import { weighAction } from '@/app/(shop)/containers/actions';
import { leftByWeight, sayWeighedError, sayWeighedLeft } from '@/app/(shop)/containers/left-by-weight';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { printQuantity } from '@/shared/units/print-quantity';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface WeighActProps {
  label: string;
  unit: StockUnit;
  prefer: UnitSystem;
  today: CalendarDate;
  order: DateOrder;
  left: string;
  /** The empty container, as it would be typed. */
  tare: string;
  densityGramsPerLitre: number | null;
}

/** Writes what is really left: directly, or by weight with the container less the empty container. */
export function WeighAct({
  label,
  unit,
  prefer,
  today,
  order,
  left,
  tare: knownTare,
  densityGramsPerLitre,
}: WeighActProps) {
  const byWeight = unit === 'mg' || (unit === 'uL' && densityGramsPerLitre !== null);
  const fresh = { way: byWeight ? 'gross' : 'left', left: '', gross: '', tare: knownTare, why: '' };
  const [typed, setTyped] = useState(fresh);
  const [happenedOn, setHappenedOn] = useState<string>();
  const set = (field: keyof typeof fresh) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));

  const readAs =
    (kind: StockUnit) =>
    (text: string): Echo => {
      const read = parseQuantity(text, { unit: kind, prefer });
      return read.ok
        ? { ok: true, says: `Reads as ${printQuantity(read.value, kind, { prefer })}.` }
        : { ok: false, says: sayQuantityError(read.error) };
    };
  const net = () => {
    const gross = parseQuantity(typed.gross, { unit: 'mg', prefer });
    const tare = parseQuantity(typed.tare, { unit: 'mg', prefer });
    if (!gross.ok || !tare.ok) return null;
    const weighed = leftByWeight({ gross: gross.value, tare: tare.value }, unit, densityGramsPerLitre);
    if (!weighed.ok) return sayWeighedError(weighed.error);
    return sayWeighedLeft(weighed.value, unit, { prefer, density: densityGramsPerLitre });
  };

  return (
    <Fold
      group="act"
      title={unit === 'mg' ? 'Weigh it' : unit === 'uL' ? 'Measure what is left' : 'Count what is left'}
      now={`${left} by the book`}
    >
      <ActForm<WeighedAgain>
        action={weighAction}
        input={{ label, ...typed, happenedOn }}
        words="Write what is left"
        done={({ broken }) => `What is left is in the book.${sayBroken(broken)}`}
        onDone={() => {
          setTyped(fresh);
          setHappenedOn(undefined);
        }}
      >
        {(errors) => (
          <>
            {byWeight ? (
              <ChoiceChips
                label="What do you have?"
                options={[
                  { value: 'gross', label: 'Its weight', hint: 'with the container' },
                  { value: 'left', label: 'What is left in it' },
                ]}
                value={typed.way}
                onChange={set('way')}
              />
            ) : null}
            {typed.way === 'left' ? (
              <QuantityField
                label="Left in it"
                hint={unit === 'piece' ? 'A number; 0 when it is empty.' : 'With its unit; 0 when it is empty.'}
                value={typed.left}
                onChange={set('left')}
                read={readAs(unit)}
                error={errors.left}
              />
            ) : (
              <>
                <QuantityField
                  label="Weight with the container"
                  value={typed.gross}
                  onChange={set('gross')}
                  read={readAs('mg')}
                  error={errors.gross ?? errors.left}
                />
                <QuantityField
                  label="The empty container"
                  hint="Its tare, from the label or an empty one like it."
                  value={typed.tare}
                  onChange={set('tare')}
                  read={readAs('mg')}
                  error={errors.tare}
                />
                <p aria-live="polite">{net()}</p>
              </>
            )}
            <TextField
              label="Note"
              optional
              value={typed.why}
              onChange={set('why')}
              maxLength={300}
              error={errors.why}
            />
            <DayItWas
              label={unit === 'mg' ? 'Weighed on' : 'Looked at on'}
              today={today}
              order={order}
              value={happenedOn}
              onChange={setHappenedOn}
              error={errors.happenedOn}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}
