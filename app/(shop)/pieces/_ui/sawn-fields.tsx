'use client';

import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { KeepKey } from '@/app/(shop)/pieces/_ui/keep-key';
import { sawnAction } from '@/app/(shop)/pieces/actions';
import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import { TOP_CUTS, type TopCut } from '@/app/(shop)/pieces/work-out-top';

const CUT_WORDS: Record<TopCut, { label: string; hint?: string }> = {
  flat: { label: 'Flat sawn' },
  quarter: { label: 'Quarter sawn' },
  mixed: { label: 'Mixed' },
  unknown: { label: 'Not known', hint: 'counts as flat' },
};

/** How the wood was sawn, to be reckoned with and, where it differs from what the book has, to be kept. */
export function SawnFields({
  label,
  kept,
  cut,
  onCut,
  quarter,
  onQuarter,
  isQuarterRead,
}: {
  label: string | null;
  kept: FiguredPiece['sawn'];
  cut: TopCut;
  onCut: (cut: TopCut) => void;
  quarter: string;
  onQuarter: (text: string) => void;
  isQuarterRead: boolean;
}) {
  const sawn = cut === 'unknown' ? '' : cut;
  return (
    <>
      <ChoiceChips
        label="How it was sawn"
        options={TOP_CUTS.map((value) => ({ value, ...CUT_WORDS[value] }))}
        value={cut}
        onChange={(value) => onCut(TOP_CUTS.find((each) => each === value) ?? 'unknown')}
      />
      {cut === 'mixed' ? (
        <TextField
          label="Quarter sawn, % of the width"
          inputMode="numeric"
          maxLength={3}
          value={quarter}
          onChange={onQuarter}
          error={isQuarterRead ? undefined : 'Give a whole number from 0 to 100.'}
        />
      ) : null}
      {label && sawn !== kept ? (
        <KeepKey
          action={sawnAction}
          input={{ label, sawn }}
          words={`Keep “${CUT_WORDS[cut].label.toLowerCase()}” in the book`}
          done="How it was sawn is in the book."
        />
      ) : null}
    </>
  );
}
