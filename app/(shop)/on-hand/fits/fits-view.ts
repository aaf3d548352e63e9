import type { FitAsk } from '@/app/_server/fits/fit-ask';
import type { WhatFits } from '@/app/_server/fits/what-fits';
import { type FitRow, fitRow, type RowContext } from '@/app/(shop)/on-hand/fits/fit-row';
import { sayLooked } from '@/app/(shop)/on-hand/fits/say-question';
import { togetherRow } from '@/app/(shop)/on-hand/fits/together-row';
import { readRequest } from '@/shared/fit/fit-request';
import { unwrap } from '@/shared/result/result';

/** A piece in a line: what cannot be used, or what comes after the drawings. */
export type ShortRow = { readonly label: string; readonly title: string; readonly says: string };

/** What the wood on hand says to a question, ready to be shown or sent. */
export type FitsView = {
  readonly looked: number;
  /** "31 pieces were looked at: 4 fit, 3 nearly fit." */
  readonly said: string;
  readonly drawn: readonly FitRow[];
  readonly more: readonly ShortRow[];
  readonly noes: readonly ShortRow[];
  /** How many pairings make no top, where pairings were looked at. */
  readonly togetherNoes: number;
  /** A no is proved to so many millimetres; undefined where there is none. */
  readonly tolerance: number | undefined;
  readonly unmeasured: readonly ShortRow[];
  readonly packs: number;
  /** Some of what is shown rests on three widths alone, or on wood with nothing marked. */
  readonly rough: boolean;
  readonly narrowed: boolean;
  readonly make: FitAsk['make']['of'];
};

/** So many are drawn; the rest of a long answer follows a line each. */
const MOST_DRAWN = 40;

export function fitsView(fits: WhatFits, ask: FitAsk, context: RowContext): FitsView {
  // It was read before it was answered.
  const request = unwrap(readRequest(ask.request));
  const rows = [
    ...fits.ranked.map((piece) => fitRow(piece, fits.sizes, context)),
    ...fits.together.map((each) => togetherRow(each, request, context)),
  ];
  const no = fits.noes[0]?.judged.fit;
  const lines = [
    ...fits.ranked.map(({ line }) => line),
    ...fits.together.flatMap(({ members }) => members.map(({ line }) => line)),
  ];
  return {
    looked: fits.looked,
    said: sayLooked(fits, ask.make),
    drawn: rows.slice(0, MOST_DRAWN),
    more: rows.slice(MOST_DRAWN).map((row) => ({
      label: row.members[0]?.label ?? '',
      title: row.members.map(({ title }) => title).join(' and '),
      says: row.words,
    })),
    noes: fits.noes.map((piece) => {
      const { members, facts } = fitRow(piece, fits.sizes, context);
      return { label: piece.line.label, title: members[0]?.title ?? '', says: facts.slice(0, 2).join(', ') };
    }),
    togetherNoes: fits.togetherNoes,
    tolerance: no?.answer === 'no' ? no.proof.tolerance / 1_000_000 : undefined,
    unmeasured: fits.unmeasured.map((line) => ({
      label: line.label,
      title: `${line.species} ${line.form}`,
      says: 'Measure its length and widths again.',
    })),
    packs: fits.packs,
    rough: lines.some(({ shape }) => shape === null),
    narrowed: ask.species !== undefined || ask.freeOnly,
    make: ask.make.of,
  };
}
