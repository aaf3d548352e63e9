import { balanceOf, stockSelect } from '@/app/_server/ledger/balance-of';
import { proveOpenedDays, proveOverrides, provePhotos } from '@/app/_server/ledger/prove-facts';
import { proveFaults } from '@/app/_server/ledger/prove-faults';
import { proveHolds } from '@/app/_server/ledger/prove-holds';
import { proveJobs } from '@/app/_server/ledger/prove-jobs';
import { proveParts } from '@/app/_server/ledger/prove-parts';
import { provePours, proveSheets } from '@/app/_server/ledger/prove-pours';
import { provePromises } from '@/app/_server/ledger/prove-promises';
import { proveStocktakes } from '@/app/_server/ledger/prove-stocktakes';
import { proveCuts, provePacks, provePairsAndShapes } from '@/app/_server/ledger/prove-wood';
import { checkIntegrity } from '@/prisma/check-integrity';
import type { WriteTransaction } from '@/prisma/open-book';
import { type Balance, emptyBalance, type StockKind } from '@/shared/ledger/balance';
import { differingFields } from '@/shared/ledger/differing-fields';
import { followMovement } from '@/shared/ledger/follow-movement';
import type { MovementFacts } from '@/shared/ledger/movement';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';

/** One rule that a book breaks, and where. */
export type Difference = { rule: string; where: string; says: string };

export type Proof = { entries: number; movements: number; things: number; differences: Difference[] };

type Reader = Pick<
  WriteTransaction,
  | 'book'
  | 'entry'
  | 'movement'
  | 'stock'
  | 'jobPart'
  | 'pour'
  | 'container'
  | 'photo'
  | 'piece'
  | 'cut'
  | 'stocktake'
  | 'weighed'
  | 'lift'
  | 'need'
  | 'sheet'
  | 'promiseLine'
  | 'promised'
  | 'job'
  | 'step'
  | 'fault'
  | '$queryRawUnsafe'
>;

const PAGE = 5000;

/**
 * Checks every rule on a book and names what differs: balances equal the fold of their movements, every movement starts
 * where the last one ended, entries are numbered without gaps, reversals are exact opposites, labels check, references
 * hold, an override rests on a passed test pour, nothing was taken while it or its lot was held, nothing was opened before
 * it was made, what was cut adds up to what it was cut from, pairs name each other, and the database's own integrity check
 * passes; given the folder of the photos, that they are there. Reads only. What is written meanwhile would look torn: give it a transaction of its own, as `proveNow`
 * does, where anything may be.
 */
export async function proveBook(tx: Reader, photos?: string, sheets?: string): Promise<Proof> {
  const differences: Difference[] = [];
  const found = (rule: string, where: string, says: string) => differences.push({ rule, where, says });
  differences.push(...(await checkIntegrity(tx)));

  const head = await tx.book.findUnique({ where: { id: 1 }, select: { revision: true } });
  const entries = await tx.entry.count();
  const last = await tx.entry.aggregate({ _max: { id: true } });
  if (head && (head.revision !== entries || (last._max.id ?? 0) !== entries)) {
    found(
      'entries-without-gaps',
      'book',
      `${entries} entries, numbered to ${last._max.id ?? 0}, revision ${head.revision}`,
    );
  }

  const movements = await tx.movement.count();
  let things = 0;
  for (let after = 0; ; ) {
    const rows = await tx.stock.findMany({
      where: { id: { gt: after } },
      orderBy: { id: 'asc' },
      take: PAGE,
      select: { id: true, label: true, lastMovementId: true, ...stockSelect },
    });
    const lastRow = rows.at(-1);
    if (!lastRow) break;
    const lines = await tx.movement.findMany({
      where: { stockId: { gt: after, lte: lastRow.id } },
      orderBy: [{ stockId: 'asc' }, { id: 'asc' }],
    });
    let line = 0;
    for (const row of rows) {
      const where = row.label ?? `thing ${row.id}`;
      let balance: Balance = emptyBalance(row.kind as StockKind);
      let lastId = 0;
      for (let movement = lines[line]; movement && movement.stockId === row.id; movement = lines[line]) {
        const next = followMovement(balance, { ...movement, quantityDelta: Number(movement.quantityDelta) });
        if (next.ok) balance = next.value;
        else found('movements-follow', where, `movement ${movement.id}: ${JSON.stringify(next.error)}`);
        lastId = movement.id;
        line += 1;
      }
      const kept = balanceOf(row);
      for (const field of differingFields(kept, balance)) {
        found('balance-equals-ledger', where, `${field} is kept as ${kept[field]}, the ledger says ${balance[field]}`);
      }
      if (row.lastMovementId !== lastId) {
        found(
          'balance-equals-ledger',
          where,
          `last movement is kept as ${row.lastMovementId}, the ledger says ${lastId}`,
        );
      }
      if (row.label !== null && !parseOwnLabel(row.label).ok) found('labels-check', where, 'the label does not check');
    }
    things += rows.length;
    after = lastRow.id;
  }
  await proveReversals(tx, found);
  await proveFaults(tx, found);
  await proveOverrides(tx, found);
  await proveOpenedDays(tx, found);
  await proveHolds(tx, found);
  await proveCuts(tx, found);
  await provePairsAndShapes(tx, found);
  await provePacks(tx, found);
  await provePromises(tx, found);
  await proveStocktakes(tx, found);
  await provePours(tx, found);
  await proveJobs(tx, found);
  await proveParts(tx, found);
  if (photos !== undefined) await provePhotos(tx, photos, found);
  if (sheets !== undefined) await proveSheets(tx, sheets, found);
  return { entries, movements, things, differences };
}

async function proveReversals(tx: Reader, found: (rule: string, where: string, says: string) => void): Promise<void> {
  const rows = await tx.movement.findMany({
    where: { reversesId: { not: null } },
    include: { reverses: true, entry: { select: { reversesId: true } } },
  });
  for (const { reverses: undone, ...row } of rows) {
    if (!undone) continue;
    const exact =
      undone.stockId === row.stockId &&
      undone.quantityDelta === -row.quantityDelta &&
      undone.entryId === row.entry.reversesId &&
      changesOf(undone).every(([from, to], nr) => {
        const [backFrom, backTo] = changesOf(row)[nr] ?? [];
        // What the movement left as it was may have changed since; the reversal leaves it too.
        return from === to ? backFrom === backTo : backFrom === to && backTo === from;
      });
    if (!exact) found('reversals-are-opposites', `movement ${row.id}`, `is not the opposite of movement ${undone.id}`);
  }
  const halves = await tx.entry.findMany({
    where: { reversesId: { not: null } },
    select: {
      id: true,
      _count: { select: { movements: true } },
      reverses: { select: { _count: { select: { movements: true } } } },
    },
  });
  for (const each of halves) {
    if (each._count.movements !== each.reverses?._count.movements) {
      found('reversals-are-whole', `entry ${each.id}`, 'undoes only a part of what it reverses');
    }
  }
}

function changesOf(
  row: Omit<MovementFacts, 'quantityDelta'>,
): readonly (readonly [string | number | null, string | number | null])[] {
  return [
    [row.placeFromId, row.placeToId],
    [row.conditionFrom, row.conditionTo],
    [row.holdFrom, row.holdTo],
    [row.jobFromId, row.jobToId],
    [row.openedFrom, row.openedTo],
  ];
}
