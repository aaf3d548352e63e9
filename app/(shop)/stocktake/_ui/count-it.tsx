'use client';

import { type FormEvent, useState } from 'react';
import type { WalkThing } from '@/app/_server/stocktake/walk-of';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import type { Echo } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { leftByWeight, sayWeighedError, sayWeighedLeft } from '@/app/(shop)/containers/left-by-weight';
import styles from '@/app/(shop)/stocktake/_ui/stocktake.module.css';
import { countAction } from '@/app/(shop)/stocktake/actions';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { printQuantity } from '@/shared/units/print-quantity';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import { milligrams, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What is in a container that was just seen: by its weight where the empty one is known, else by amount. */
export function CountIt({
  stocktake,
  thing,
  prefer,
  onCounted,
}: {
  stocktake: number;
  thing: WalkThing;
  prefer: UnitSystem;
  onCounted: (thing: WalkThing) => void;
}) {
  const { stockId, unit, tareMg, densityGramsPerLitre, seen } = thing;
  const byWeight = tareMg !== null && (unit === 'mg' || (unit === 'uL' && densityGramsPerLitre !== null));
  const [way, setWay] = useState(byWeight ? 'gross' : 'amount');
  const [typed, setTyped] = useState({ gross: '', amount: '' });
  const { run, pending, problem } = useAct(countAction);
  const errors = useFieldErrors(problem, typed);
  const counted = seen?.counted ?? null;

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
    if (!gross.ok || tareMg === null) return null;
    const left = leftByWeight({ gross: gross.value, tare: milligrams(tareMg) }, unit, densityGramsPerLitre);
    if (!left.ok) return sayWeighedError(left.error);
    return sayWeighedLeft(left.value, unit, { prefer, density: densityGramsPerLitre });
  };
  const send = async (input: { way: string; gross: string; amount: string }) => {
    const answer = await run({ stocktake, stockId, ...input });
    if (!answer.ok) return giveFeedback('error');
    const { thing: now } = answer.answer;
    giveFeedback(now.status === 'here' ? 'use' : 'care');
    setTyped({ gross: '', amount: '' });
    onCounted(now);
  };

  return (
    <form
      className={styles.count}
      noValidate
      onSubmit={(submit: FormEvent) => {
        submit.preventDefault();
        if (!pending) void send({ way, ...typed });
      }}
    >
      {byWeight ? (
        <ChoiceChips
          label="What do you have?"
          options={[
            { value: 'gross', label: 'Its weight', hint: 'with the container' },
            { value: 'amount', label: 'What is left in it' },
          ]}
          value={way}
          onChange={setWay}
        />
      ) : null}
      {way === 'gross' ? (
        <>
          <QuantityField
            label="Weight with the container"
            hint={
              tareMg === null ? undefined : `Empty it weighs ${printQuantity(milligrams(tareMg), 'mg', { prefer })}.`
            }
            value={typed.gross}
            onChange={(gross) => setTyped((before) => ({ ...before, gross }))}
            read={readAs('mg')}
            error={errors.gross ?? errors.amount}
          />
          <p aria-live="polite">{net()}</p>
        </>
      ) : (
        <QuantityField
          label={unit === 'piece' ? 'How many are in it' : 'Left in it'}
          hint={unit === 'piece' ? 'A number; 0 when it is empty.' : 'With its unit; 0 when it is empty.'}
          value={typed.amount}
          onChange={(amount) => setTyped((before) => ({ ...before, amount }))}
          read={readAs(unit)}
          error={errors.amount}
        />
      )}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key type="submit" pending={pending} pendingWords="Noting it">
        Note what is in it
      </Key>
      {counted === null ? null : (
        <Key variant="ghost" pending={pending} onClick={() => void send({ way: 'none', gross: '', amount: '' })}>
          Take the amount back: it was only seen
        </Key>
      )}
    </form>
  );
}
