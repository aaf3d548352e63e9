import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import {
  indexPiece,
  keptFlags,
  PIECE_SIZES,
  type PieceColumns,
  type PieceFields,
  pieceColumns,
  refuseFields,
  type SoldFacts,
} from '@/app/_server/stock/piece-fields';
import { refuseFlitchNumber } from '@/app/_server/stock/refuse-flitch-number';
import { sayPieceChanges } from '@/app/_server/stock/say-piece-changes';
import { err, ok } from '@/shared/result/result';
import { needsReason } from '@/shared/wood/needs-reason';
import { GRAINS, SURFACINGS } from '@/shared/wood/piece';

export type ChangePiece = PieceFields & {
  label: string;
  /** Needed where a measure is another, or something seen on it is no longer there: both change what may be done with it. */
  why: string;
};

/** Puts right what the book knows of a piece of wood. A slab stays a slab: its form is in its label. */
export const changePiece: Command<ChangePiece, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'piece-changed', request: input }, async (pen) => {
    const row = await pen.tx.piece.findFirst({
      where: { stock: { label: input.label } },
      select: {
        stockId: true,
        form: true,
        species: true,
        lengthNm: true,
        widthStartNm: true,
        widthMiddleNm: true,
        widthEndNm: true,
        thicknessNm: true,
        flags: true,
        flitch: true,
        flitchNumber: true,
        note: true,
        origin: true,
        sapwoodNm: true,
        quarters: true,
        surfacing: true,
        grain: true,
        faceA: true,
        faceB: true,
        shapeId: true,
      },
    });
    if (!row) return err({ code: 'not-found' });
    const { stockId, form, shapeId, ...before } = row;
    const refused = refuseFields(input);
    if (refused) return err(refused);
    const after = pieceColumns({ ...soldFacts(before), ...input });
    const measured = PIECE_SIZES.find((size) => size !== 'thicknessNm' && after[size] !== before[size]);
    if (shapeId !== null && measured) {
      return err({ code: 'measured-shape', field: measured, facts: { label: input.label } });
    }
    const changes = sayPieceChanges(before, after, pen.book.units === 'metric' ? 'metric' : 'imperial');
    if (changes.length === 0) return err({ code: 'changes-nothing' });
    const { species, flitch } = after;
    const taken = await refuseFlitchNumber(pen.tx, {
      form,
      species,
      flitch,
      first: input.flitchNumber,
      count: 1,
      stockId,
    });
    if (taken) return err(taken);
    const why = input.why.trim();
    if (why === '' && needsReason(reliedOn(before), reliedOn(after))) {
      return err({ code: 'reason-needed', field: 'why' });
    }
    await pen.tx.piece.update({ where: { stockId }, data: after, select: { stockId: true } });
    await indexPiece(pen.tx, { stockId });
    const answer = { label: input.label };
    await pen.enter({ stockId, why: asSentences(changes.join('; '), why) }, answer);
    return ok(answer);
  });

/** What is not asked by whoever puts a piece right stays as it is. */
const soldFacts = ({ quarters, surfacing, grain, sapwoodNm, ...columns }: PieceColumns): SoldFacts => ({
  sapwoodNm: sapwoodNm === null ? undefined : Number(sapwoodNm),
  origin: columns.origin,
  faceA: columns.faceA,
  faceB: columns.faceB,
  quarters: quarters ?? undefined,
  surfacing: SURFACINGS.find((each) => each === surfacing),
  grain: GRAINS.find((each) => each === grain),
});

const reliedOn = (columns: PieceColumns) => ({
  measures: PIECE_SIZES.map((size) => columns[size]),
  flags: keptFlags(columns.flags),
});

const asSentences = (changes: string, why: string) =>
  `${changes.charAt(0).toUpperCase()}${changes.slice(1).replace(/[.]$/, '')}.${why && ` ${why}`}`;
