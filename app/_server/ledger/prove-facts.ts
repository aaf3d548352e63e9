import fs from 'node:fs';
import path from 'node:path';
import type { WriteTransaction } from '@/prisma/open-book';
import { readOpened } from '@/shared/ledger/opened';

type Found = (rule: string, where: string, says: string) => void;
type Reader = Pick<WriteTransaction, 'entry' | 'photo' | 'container'>;

/** A pull against a Stop rests on a passed test pour of that very container, or of its lot. */
export async function proveOverrides(tx: Reader, found: Found): Promise<void> {
  const rows = await tx.entry.findMany({
    where: {
      OR: [{ overrideInspectionId: { not: null } }, { kind: { in: ['pulled', 'weighed-out'] }, verdict: 'stop' }],
    },
    select: {
      id: true,
      overrideInspection: {
        select: { id: true, kind: true, passed: true, entryId: true, lotId: true, containerId: true },
      },
      movements: { select: { stockId: true, stock: { select: { container: { select: { lotId: true } } } } } },
    },
  });
  const say = (id: number, says: string) => found('overrides-rest-on-a-pour', `entry ${id}`, says);
  for (const { id, overrideInspection: pour, movements } of rows) {
    if (!pour) {
      say(id, 'was pulled against a Stop without a test pour');
      continue;
    }
    if (pour.kind !== 'test-pour') say(id, `rests on inspection ${pour.id}, which is no test pour`);
    if (!pour.passed) say(id, `rests on test pour ${pour.id}, which did not pass`);
    if (pour.entryId >= id) say(id, `rests on test pour ${pour.id}, which was recorded after it`);
    for (const { stockId, stock } of movements) {
      const speaks = pour.containerId === null || pour.containerId === stockId;
      if (!speaks || pour.lotId !== stock.container?.lotId)
        say(id, `rests on test pour ${pour.id}, which is of something else`);
    }
  }
}

/** Every photo that the book names is in its folder, as long as it was when it was kept. */
export async function provePhotos(tx: Reader, folder: string, found: Found): Promise<void> {
  const rows = await tx.photo.findMany({ select: { file: true, bytes: true }, orderBy: { id: 'asc' } });
  for (const { file, bytes } of rows) {
    const size = fs.statSync(path.join(folder, file), { throwIfNoEntry: false })?.size;
    if (size === undefined) found('photos-are-there', file, 'is named in the book and not in its photos');
    else if (size !== bytes) found('photos-are-there', file, `is ${size} bytes long, the book says ${bytes}`);
  }
}

/** No container was opened before its lot was made, where both are known by the day. */
export async function proveOpenedDays(tx: Reader, found: Found): Promise<void> {
  const rows = await tx.container.findMany({
    where: { lot: { madeOn: { not: null }, madePrecision: 'day' }, stock: { opened: { not: null } } },
    select: { stockId: true, lot: { select: { madeOn: true } }, stock: { select: { label: true, opened: true } } },
    orderBy: { stockId: 'asc' },
  });
  for (const { stockId, lot, stock } of rows) {
    const opened = readOpened(stock.opened);
    if (opened?.sureness !== 'known' || lot.madeOn === null || opened.on >= lot.madeOn) continue;
    found('opened-after-made', stock.label ?? `thing ${stockId}`, `opened ${opened.on}, made ${lot.madeOn}`);
  }
}
