import type { KeptSheet } from '@/app/_server/pours/receive-sheet';
import { sheetFacts } from '@/app/_server/pours/sheet-facts';
import type { WriteTransaction } from '@/prisma/open-book';
import type { ResinSheet } from '@/shared/pour/resin-sheet';

/** What a sheet says, the sheet itself where there is one, and who kept it when. */
export type SheetLine = { id: number; facts: ResinSheet; kept?: KeptSheet; at: string; who: string };

type Reader = Pick<WriteTransaction, 'sheet'>;

/** The sheets of a resin system that stand, newest first: the first one counts. */
export async function sheetsOf(tx: Reader, systemId: number, most = 20): Promise<SheetLine[]> {
  const rows = await tx.sheet.findMany({
    where: { systemId, entry: { reversedBy: null } },
    orderBy: { id: 'desc' },
    take: most,
    select: {
      id: true,
      facts: true,
      file: true,
      fileName: true,
      bytes: true,
      entry: { select: { happenedAt: true, who: true } },
    },
  });
  return rows.map(({ id, facts: text, file: own, fileName, bytes, entry }) => {
    const { file: named, ...said } = JSON.parse(text) as ResinSheet & { file?: string };
    const facts = sheetFacts(said);
    const file = own ?? named;
    return {
      id,
      facts,
      ...(file && { kept: { file, fileName, bytes: bytes ?? 0 } }),
      at: entry.happenedAt.toISOString(),
      who: entry.who,
    };
  });
}

/** The sheet that counts, or undefined where nothing of a sheet was kept. */
export async function newestSheet(tx: Reader, systemId: number): Promise<SheetLine | undefined> {
  return (await sheetsOf(tx, systemId, 1))[0];
}
