'use client';

import { useState } from 'react';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import type { Echo } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import styles from '@/app/(shop)/jobs/[id]/needs/_ui/needs.module.css';
import { addArrivingAction } from '@/app/(shop)/on-hand/arriving/actions';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { printQuantity } from '@/shared/units/print-quantity';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface OrderFormProps {
  products: readonly { id: number; name: string; unit: StockUnit }[];
  prefer: UnitSystem;
  today: CalendarDate;
  order: DateOrder;
  /** What stands in it at first: what the list of what to buy said. */
  asked: { productId: string; words: string; amount: string; dueOn: string };
}

/** An order: what, how much, when it is due, from whom, and what it costs. */
export function OrderForm({ products, prefer, today, order, asked }: OrderFormProps) {
  const [typed, setTyped] = useState({ ...asked, supplier: '', cost: '' });
  const set = (field: keyof typeof typed) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  const product = products.find((each) => String(each.id) === typed.productId);
  const unit: StockUnit = product?.unit ?? 'piece';
  const read = (text: string): Echo => {
    const amount = parseQuantity(text, { unit, prefer });
    return amount.ok
      ? { ok: true, says: `Reads as ${printQuantity(amount.value, unit, { prefer })}.` }
      : { ok: false, says: sayQuantityError(amount.error) };
  };
  return (
    <ActForm<{ entryId: number; words: string }>
      action={addArrivingAction}
      input={{ ...typed, unit, productId: product?.id }}
      words="It is ordered"
      done="The order is in the book: it counts from the day it is due."
      onDone={() => setTyped((before) => ({ ...before, productId: '', words: '', amount: '', cost: '' }))}
    >
      {(errors) => (
        <div className={styles.form}>
          <SelectField
            label="Product"
            none="Wood, or no product of the book"
            options={products.map((each) => ({ value: String(each.id), label: each.name }))}
            value={typed.productId}
            onChange={set('productId')}
            error={errors.productId}
          />
          {product ? null : (
            <TextField
              label="What is coming"
              hint="Name the wood, for example Walnut slabs: needs of that wood then count it."
              value={typed.words}
              onChange={set('words')}
              error={errors.words}
              maxLength={200}
            />
          )}
          <QuantityField
            label="How much in all"
            hint={
              unit === 'piece' ? 'Pieces, for example 2.' : unit === 'uL' ? 'For example 2 L.' : 'For example 5 kg.'
            }
            value={typed.amount}
            onChange={set('amount')}
            read={read}
            error={errors.amount}
            maxLength={60}
          />
          <DateTextField
            label="Due on"
            today={today}
            order={order}
            aim="ahead"
            value={typed.dueOn}
            onChange={set('dueOn')}
            error={errors.dueOn}
          />
          <TextField
            label="From"
            optional
            value={typed.supplier}
            onChange={set('supplier')}
            error={errors.supplier}
            maxLength={120}
          />
          <TextField
            label="What all of it costs"
            optional
            inputMode="decimal"
            value={typed.cost}
            onChange={set('cost')}
            error={errors.cost}
            maxLength={60}
          />
        </div>
      )}
    </ActForm>
  );
}
