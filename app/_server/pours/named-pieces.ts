import { loadPiece, type PieceLine } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import type { Nanometres } from '@/shared/units/nanometres';

/** Wood that a pour is to be planned for before its job has it. */
export type NamedPiece = {
  label: OwnLabelCode;
  /** "Walnut slab 3" */
  title: string;
  thickness: Nanometres;
  stands: PieceStands;
  /** Not free: in quarantine or on hold. */
  isHeld: boolean;
  pairedWith: PieceLine['pairedWith'];
};

export type PieceStands =
  | { is: 'free' }
  /** Promised to the job, or taken into it. */
  | { is: 'its-own' }
  | { is: 'elsewhere'; job: { id: number; name: string } }
  /** Cut, used up or thrown away. */
  | { is: 'gone' };

/** How a piece stands to a job that wants it; to none, where none was chosen yet. */
export function pieceStands({ facts }: Pick<PieceLine, 'facts'>, jobId: number | undefined): PieceStands {
  const { promisedTo, inStock } = facts;
  if (promisedTo && promisedTo.id === jobId) return { is: 'its-own' };
  if (!inStock) return { is: 'gone' };
  return promisedTo ? { is: 'elsewhere', job: promisedTo } : { is: 'free' };
}

/** Pieces by their labels, as they stand to a job; those that are in no book are left out. */
export async function namedPieces(
  book: Pick<OpenBook, 'read'>,
  labels: readonly string[],
  jobId?: number,
): Promise<NamedPiece[]> {
  const lines = await Promise.all(labels.map((label) => loadPiece(book.read, label)));
  return lines.flatMap((line) =>
    line
      ? [
          {
            label: line.label,
            title: `${line.species} ${line.form}${line.flitchNumber === null ? '' : ` ${line.flitchNumber}`}`,
            thickness: line.thicknessNm,
            stands: pieceStands(line, jobId),
            isHeld: line.facts.hold !== 'free',
            pairedWith: line.pairedWith,
          },
        ]
      : [],
  );
}
