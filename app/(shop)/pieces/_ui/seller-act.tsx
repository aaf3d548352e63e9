'use client';

import { useState } from 'react';
import type { SellerFigures } from '@/app/_server/shapes/seller-figures';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import { sellerAction } from '@/app/(shop)/pieces/actions';
import { BOARD_FOOT_MM3 } from '@/app/(shop)/pieces/read-volume';
import { printLengthExact } from '@/shared/units/print-length-exact';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { milligrams } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** Keeps what the seller said of a piece. */
export function SellerAct({ label, said, prefer }: { label: string; said: SellerFigures; prefer: UnitSystem }) {
  const begun = asTyped(said, prefer);
  const [typed, setTyped] = useState(begun);
  const set = (field: keyof typeof begun) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  const isSaid = Object.values(begun).some((text) => text !== '');
  return (
    <Fold group="act" title="What the seller said" now={isSaid ? begun.name || 'kept' : 'nothing kept'}>
      <ActForm
        action={sellerAction}
        input={{ label, ...typed }}
        words="Keep the seller’s figures"
        done="The seller’s figures are in the book."
      >
        {(errors) => (
          <>
            <TextField
              label="Seller"
              optional
              value={typed.name}
              onChange={set('name')}
              maxLength={120}
              error={errors.name}
            />
            {(['length', 'width', 'thickness'] as const).map((field) => (
              <LengthField
                key={field}
                label={field.charAt(0).toUpperCase() + field.slice(1)}
                optional
                mode={field === 'thickness' ? 'thickness' : 'length'}
                prefer={prefer}
                value={typed[field]}
                onChange={set(field)}
                error={errors[field]}
              />
            ))}
            <TextField
              label="Volume"
              hint="As it stands on the bill: 42.5 bf, 0.1 m³ or 3.5 ft³."
              optional
              value={typed.volume}
              onChange={set('volume')}
              maxLength={40}
              error={errors.volume}
            />
            <TextField
              label="Weight"
              optional
              value={typed.mass}
              onChange={set('mass')}
              maxLength={40}
              error={errors.mass}
            />
            <TextField
              label="Moisture, %"
              optional
              inputMode="decimal"
              value={typed.moisture}
              onChange={set('moisture')}
              maxLength={10}
              error={errors.moisture}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}

function asTyped(said: SellerFigures, prefer: UnitSystem) {
  const length = (nm: SellerFigures['lengthNm']) => (nm === null ? '' : printLengthExact(nm, prefer));
  const volume = (mm3: number) =>
    prefer === 'imperial' ? `${(mm3 / BOARD_FOOT_MM3).toFixed(2)} bf` : `${(mm3 / 1e9).toFixed(5)} m³`;
  return {
    name: said.name,
    length: length(said.lengthNm),
    width: length(said.widthNm),
    thickness: length(said.thicknessNm),
    volume: said.volumeMm3 === null ? '' : volume(said.volumeMm3),
    mass: said.massMg === null ? '' : printQuantityExact(milligrams(said.massMg), 'mg'),
    moisture: said.mcTenths === null ? '' : String(said.mcTenths / 10),
  };
}
