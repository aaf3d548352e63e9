import type { Part } from '@/app/_server/cuts/parts-of-cut';
import type { Pen } from '@/app/_server/ledger/write-entry';
import { STRIKES, standing } from '@/app/_server/stock/struck-readings';

/**
 * A piece takes over the readings taken where it was, and those of which nobody said where; each names the one it was. What
 * was struck out stays behind.
 */
export async function inheritReadings(pen: Pen, parentId: number, part: Part, stockId: number): Promise<void> {
  const struck = await pen.tx.entry.findMany({
    where: { stockId: parentId, ...STRIKES },
    select: { reference: true },
  });
  const readings = await pen.tx.reading.findMany({
    where: { pieceId: parentId },
    orderBy: { id: 'asc' },
    omit: { entryId: true, pieceId: true },
  });
  const { shift, turned } = part.laid;
  const inherited = standing(readings, struck)
    .filter(({ alongNm, acrossNm }) =>
      part.holds({
        ...(alongNm === null ? {} : { x: Math.round(Number(alongNm) / 1000) }),
        ...(acrossNm === null ? {} : { y: Math.round(Number(acrossNm) / 1000) }),
      }),
    )
    .map(({ id, ...reading }) => ({
      ...reading,
      alongNm: reading.alongNm === null ? null : reading.alongNm - BigInt(shift) * 1000n,
      acrossNm: reading.acrossNm === null || !turned ? reading.acrossNm : -reading.acrossNm,
      pieceId: stockId,
      entryId: pen.entryId,
      inheritedFromId: id,
    }));
  await pen.tx.reading.createMany({ data: inherited });
}
