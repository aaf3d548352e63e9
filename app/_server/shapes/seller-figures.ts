import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { OpenBook } from '@/prisma/open-book';
import { err, ok } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLengthExact } from '@/shared/units/print-length-exact';
import { printQuantity } from '@/shared/units/print-quantity';
import { milligrams } from '@/shared/units/stock-unit';

/** What a seller said of a piece; null where nothing was said. Volume in cubic millimetres, mass in milligrams. */
export type SellerFigures = {
  name: string;
  lengthNm: Nanometres | null;
  widthNm: Nanometres | null;
  thicknessNm: Nanometres | null;
  volumeMm3: number | null;
  massMg: number | null;
  mcTenths: number | null;
};

const select = {
  stockId: true,
  sellerName: true,
  sellerLengthNm: true,
  sellerWidthNm: true,
  sellerThicknessNm: true,
  sellerVolumeMm3: true,
  sellerMassMg: true,
  sellerMcTenths: true,
} as const;

/** What the seller of a piece said of it. */
export async function readSellerFigures(book: OpenBook, stockId: number): Promise<SellerFigures> {
  const row = await book.read.piece.findUniqueOrThrow({ where: { stockId }, select });
  const length = (nm: bigint | null) => (nm === null ? null : nanometres(nm));
  const whole = (amount: bigint | null) => (amount === null ? null : Number(amount));
  return {
    name: row.sellerName,
    lengthNm: length(row.sellerLengthNm),
    widthNm: length(row.sellerWidthNm),
    thicknessNm: length(row.sellerThicknessNm),
    volumeMm3: whole(row.sellerVolumeMm3),
    massMg: whole(row.sellerMassMg),
    mcTenths: row.sellerMcTenths,
  };
}

/** Keeps what a seller said, beside what was measured. */
export const noteSellerFigures: Command<SellerFigures & { label: string }, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'seller-noted', request: input }, async (pen) => {
    const row = await pen.tx.piece.findFirst({ where: { stock: { label: input.label } }, select });
    if (!row) return err({ code: 'not-found', facts: { label: input.label } });
    const { label, name } = input;
    const whole = (amount: number | null) => (amount === null ? null : BigInt(amount));
    const data = {
      sellerName: name.trim(),
      sellerLengthNm: whole(input.lengthNm),
      sellerWidthNm: whole(input.widthNm),
      sellerThicknessNm: whole(input.thicknessNm),
      sellerVolumeMm3: whole(input.volumeMm3),
      sellerMassMg: whole(input.massMg),
      sellerMcTenths: input.mcTenths,
    };
    const { stockId, ...before } = row;
    const isSame = Object.entries(data).every(([key, value]) => before[key as keyof typeof before] === value);
    if (isSame) return err({ code: 'changes-nothing' });
    await pen.tx.piece.update({ where: { stockId }, data, select: { stockId: true } });
    await pen.enter({ stockId, why: saySeller(input, pen.book.units) }, { label });
    return ok({ label });
  });

/** What was said, as the history keeps it: "Hill Sawmill; 2400 mm long; 8 %". */
function saySeller(said: SellerFigures, units: string): string {
  const prefer = units === 'metric' ? 'metric' : 'imperial';
  const length = (nm: Nanometres | null, word: string) =>
    nm === null ? '' : `${printLengthExact(nm, prefer)} ${word}`;
  const { lengthNm, widthNm, thicknessNm, volumeMm3, massMg, mcTenths } = said;
  return [
    said.name.trim(),
    length(lengthNm, 'long'),
    length(widthNm, 'wide'),
    length(thicknessNm, 'thick'),
    volumeMm3 === null ? '' : `${(volumeMm3 / 1e9).toFixed(4)} m³`,
    massMg === null ? '' : printQuantity(milligrams(massMg), 'mg', { prefer }),
    mcTenths === null ? '' : `${mcTenths / 10} %`,
  ]
    .filter(Boolean)
    .join('; ');
}
