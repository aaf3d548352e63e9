'use client';

import { useState } from 'react';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { noteFinishSheetAction } from '@/app/(shop)/products/actions';
import { readCoverage, typedCoverage } from '@/shared/finish/coverage-text';
import type { FinishSheet } from '@/shared/finish/finish-sheet';
import { wetFilm } from '@/shared/finish/wet-film';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What the data sheet of a finish says, written down or changed. */
export function FinishSheetForm({
  productId,
  sheet,
  prefer,
}: {
  productId: number;
  sheet: FinishSheet | null;
  prefer: UnitSystem;
}) {
  const text = (value: number | undefined) => (value === undefined ? '' : String(value));
  const [typed, setTyped] = useState({
    from: sheet?.from ?? 'sheet',
    coverageTenths: sheet?.coverageTenths === undefined ? '' : typedCoverage(sheet.coverageTenths, { prefer }),
    coats: text(sheet?.coats),
    recoatFromHours: text(sheet?.recoatFromHours),
    recoatToHours: text(sheet?.recoatToHours),
    cureDays: text(sheet?.cureDays),
    sandBetween: sheet?.sandBetween ?? false,
  });
  const set = (change: Partial<typeof typed>) => setTyped({ ...typed, ...change });
  return (
    <Fold group="act" title={sheet ? 'Change what its sheet says' : 'Write down what its sheet says'}>
      <ActForm
        action={noteFinishSheetAction}
        input={{ productId, ...typed }}
        words="Keep what the sheet says"
        done="Kept. Coats are planned by it from now on."
      >
        {(errors) => {
          const number = (
            field: 'coats' | 'recoatFromHours' | 'recoatToHours' | 'cureDays',
            label: string,
            hint?: string,
          ) => (
            <TextField
              label={label}
              hint={hint}
              optional
              inputMode="numeric"
              value={typed[field]}
              onChange={(value) => set({ [field]: value })}
              maxLength={4}
              error={errors[field]}
            />
          );
          return (
            <>
              <ChoiceChips
                label="Where the numbers are from"
                options={[
                  { value: 'sheet', label: 'Its data sheet' },
                  { value: 'typed', label: 'Typed without one', hint: 'marked so' },
                ]}
                value={typed.from}
                onChange={(from) => set({ from: from === 'typed' ? 'typed' : 'sheet' })}
                error={errors.from}
              />
              <QuantityField
                label={prefer === 'metric' ? 'Coverage, m² a litre' : 'Coverage, ft² a gallon'}
                hint="Of one coat."
                optional
                value={typed.coverageTenths}
                onChange={(coverageTenths) => set({ coverageTenths })}
                error={errors.coverageTenths}
                read={(value) => {
                  const read = readCoverage(value, { prefer });
                  return read.ok
                    ? { ok: true, says: `${Math.round(wetFilm(read.value))} µm wet, a coat.` }
                    : { ok: false, says: 'A number that a finish can reach.' };
                }}
              />
              {number('coats', 'Coats the sheet asks for')}
              {number(
                'recoatFromHours',
                'Next coat from, hours',
                'Up to 8 hours is the same day; more is the next day.',
              )}
              {number('recoatToHours', 'Next coat to, hours', 'After that it is sanded first.')}
              {number('cureDays', 'Cured after, days', 'When it may leave the shop and bears use.')}
              <CheckChips
                label="Between coats"
                options={[{ value: 'sand', label: 'Sand every coat' }]}
                values={typed.sandBetween ? ['sand'] : []}
                onChange={(values) => set({ sandBetween: values.length > 0 })}
              />
            </>
          );
        }}
      </ActForm>
    </Fold>
  );
}
