import fs from 'node:fs';
import path from 'node:path';
import type { WriteTransaction } from '@/prisma/open-book';
import type { WeighedOut } from '@/shared/pour/weigh-out';
import { gramsPerLitre } from '@/shared/units/density';
import { massToVolume } from '@/shared/units/mass-to-volume';
import { milligrams } from '@/shared/units/stock-unit';

type Found = (rule: string, where: string, says: string) => void;
type Reader = Pick<WriteTransaction, 'weighed' | 'lift' | 'need' | 'sheet'>;

/**
 * What was weighed out for a lift is what left the container, and no more of a lift is poured than was weighed; batches
 * add up; the needs of a lift are what its batches ask for.
 */
export async function provePours(tx: Reader, found: Found): Promise<void> {
  const rows = await tx.weighed.findMany({
    orderBy: { id: 'asc' },
    select: {
      id: true,
      massMg: true,
      part: true,
      stockId: true,
      entry: { select: { movements: { select: { stockId: true, quantityDelta: true } } } },
      stock: {
        select: {
          container: { select: { product: { select: { unit: true, part: true, densityGramsPerLitre: true } } } },
        },
      },
    },
  });
  for (const { id, massMg, stockId, entry, stock } of rows) {
    const line = entry.movements.find((each) => each.stockId === stockId);
    const product = stock.container?.product;
    const density = gramsPerLitre(product?.densityGramsPerLitre ?? 0);
    const mass = milligrams(massMg);
    const wanted = product?.unit === 'uL' && density.ok ? massToVolume(mass, density.value).amount : mass;
    const isRight =
      line !== undefined &&
      (product?.unit === 'uL'
        ? Math.abs(Number(line.quantityDelta) + wanted) <= 1
        : Number(line.quantityDelta) === -wanted);
    if (!isRight)
      found('weighed-is-what-left', `weighing ${id}`, `${mass} mg, the container lost ${line?.quantityDelta ?? 0}`);
  }
  const lifts = await tx.lift.findMany({
    orderBy: { id: 'asc' },
    select: {
      id: true,
      batches: true,
      needs: { where: { removedById: null }, select: { resinPart: true, amount: true } },
      pouredBy: { select: { reversedBy: { select: { id: true } } } },
      weighed: { where: { entry: { reversedBy: null } }, select: { batch: true, part: true } },
    },
  });
  for (const { id, batches: text, needs, pouredBy, weighed } of lifts) {
    const batches = JSON.parse(text) as WeighedOut[];
    for (const [row, { a, b, total }] of batches.entries()) {
      if (a + b !== total) found('batches-add-up', `lift ${id}`, `batch ${row + 1} is ${a} and ${b}, not ${total}`);
      const isIn = (part: string) => weighed.some((each) => each.batch === row + 1 && each.part === part);
      if (pouredBy && !pouredBy.reversedBy && !(isIn('A') && isIn('B'))) {
        found('poured-was-weighed', `lift ${id}`, `batch ${row + 1} was poured and not weighed`);
      }
    }
    for (const { resinPart, amount } of needs) {
      const asked = batches.reduce((sum, batch) => sum + (resinPart === 'A' ? batch.a : batch.b), 0);
      if (Number(amount) !== asked) {
        found(
          'lift-needs-its-batches',
          `lift ${id}`,
          `${amount} mg of ${resinPart} are asked for, its batches take ${asked}`,
        );
      }
    }
  }
}

/** Every data sheet that the book names is in its folder, as long as it was when it was kept. */
export async function proveSheets(tx: Reader, folder: string, found: Found): Promise<void> {
  const rows = await tx.sheet.findMany({ where: { file: { not: null } }, select: { file: true, bytes: true } });
  for (const { file, bytes } of rows) {
    const size = fs.statSync(path.join(folder, file ?? ''), { throwIfNoEntry: false })?.size;
    if (size === undefined) found('sheets-are-there', file ?? '', 'is named in the book and not in its sheets');
    else if (size !== bytes) found('sheets-are-there', file ?? '', `is ${size} bytes long, the book says ${bytes}`);
  }
}
