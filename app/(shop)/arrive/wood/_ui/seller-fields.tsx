'use client';

import { TextField } from '@/app/_ui/field/text-field';
import type { TypedTally } from '@/app/(shop)/arrive/wood/tally';

interface SellerFieldsProps {
  tally: TypedTally;
  onChange: (tally: TypedTally) => void;
  error?: string | undefined;
}

/** What the seller counted in a pack, kept beside what is tallied here. */
export function SellerFields({ tally, onChange, error }: SellerFieldsProps) {
  return (
    <>
      <TextField
        label="The seller’s tally, board feet"
        optional
        inputMode="decimal"
        maxLength={20}
        value={tally.sellerBoardFeet}
        onChange={(sellerBoardFeet) => onChange({ ...tally, sellerBoardFeet })}
        error={error}
      />
      <TextField
        label="Seller"
        optional
        maxLength={120}
        value={tally.sellerName}
        onChange={(sellerName) => onChange({ ...tally, sellerName })}
      />
    </>
  );
}
