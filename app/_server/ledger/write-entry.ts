import { createHash } from 'node:crypto';
import { balanceOf, type StockRow } from '@/app/_server/ledger/balance-of';
import type { Refusal } from '@/app/_server/refusal';
import type { Who } from '@/app/_server/who/who';
import type { OpenBook, WriteTransaction } from '@/prisma/open-book';
import { applyChange } from '@/shared/ledger/apply-change';
import type { Balance } from '@/shared/ledger/balance';
import type { Change, MovementFacts } from '@/shared/ledger/movement';
import { err, ok, type Result, unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import type { OwnLabelKind } from '@/shared/scan-codes/own-label';

/** One act somebody asks for. The key comes from the asker: the same key answers the first result. */
export type Act = {
  key: string;
  kind: string;
  who: Who;
  /** The input as the command has it; a key used again with another request is refused. */
  request: unknown;
  /** The digest of the input as it was sent, before it was read: where there is one, that is the request. */
  sent?: string;
  now: Date;
  /** When it happened, where that is not now. */
  happenedAt?: Date;
};

type EntryFields = {
  why?: string;
  reference?: string;
  jobId?: number | null;
  productId?: number | null;
  placeId?: number | null;
  /** The thing it is about, where nothing of it moves. */
  stockId?: number;
  verdict?: string;
  verdictJson?: string;
  overrideInspectionId?: number;
  reversesId?: number;
  /** Another thing it is also about: it stands in that one's history too. */
  alsoStockId?: number;
};

/** What a command writes with. It holds the book's pen: no other writer comes between. */
export type Pen = {
  tx: WriteTransaction;
  now: Date;
  book: { timeZone: string; currency: string; units: string; name: string };
  /** The number this entry will have. */
  entryId: number;
  /** A label never given before. */
  mintLabel: (kind: OwnLabelKind) => Promise<string>;
  /** Writes the entry. Once, before its movements; the answer is what a replay of the key will get. */
  enter: (fields: EntryFields, answer: unknown) => Promise<void>;
  /** Writes one movement and the balance after it. */
  move: (stockId: number, change: Change, reversesId?: number) => Promise<Result<Balance, Refusal>>;
};

export type Written<A> = { answer: A; replayed: boolean };

class RolledBack extends Error {
  constructor(readonly outcome: Result<Written<never>, Refusal> | { replay: string }) {
    super('rolled back');
  }
}

/**
 * Writes one entry with its movements, all or nothing.
 * The pen is taken first, by raising the book's revision: writers queue behind that row on any database, so whatever
 * `work` reads through `pen.tx` stays true until it commits.
 */
export async function writeEntry<A>(
  book: OpenBook,
  act: Act,
  work: (pen: Pen) => Promise<Result<A, Refusal>>,
): Promise<Result<Written<A>, Refusal>> {
  const request = act.sent ?? createHash('sha256').update(JSON.stringify(act.request)).digest('hex');
  try {
    return await book.write(async (tx) => {
      const head = await takePen(tx);
      if (!head) throw new RolledBack(err({ code: 'no-book-yet' }));
      const [earlier] = await tx.$queryRaw<{ request: string; kind: string; answer: string }[]>`
        SELECT "request", "kind", "answer" FROM "Entry" WHERE "key" = ${act.key}`;
      if (earlier) {
        if (earlier.request !== request || earlier.kind !== act.kind) {
          throw new RolledBack(err({ code: 'key-used-for-something-else' }));
        }
        throw new RolledBack({ replay: earlier.answer });
      }
      const result = await work(penFor(tx, act, request, head));
      if (!result.ok) throw new RolledBack(result);
      return ok({ answer: result.value, replayed: false });
    });
  } catch (error) {
    if (!(error instanceof RolledBack)) throw error;
    if ('replay' in error.outcome) return ok({ answer: JSON.parse(error.outcome.replay) as A, replayed: true });
    return error.outcome;
  }
}

type Head = { revision: number; labelSerial: number; timeZone: string; currency: string; units: string; name: string };

// What every write does to the book is asked in SQL: through the client's own way it took longer than the disk.
async function takePen(tx: WriteTransaction): Promise<Head | undefined> {
  const [head] = await tx.$queryRaw<Head[]>`
    UPDATE "Book" SET "revision" = "revision" + 1 WHERE "id" = 1
    RETURNING "revision", "labelSerial", "timeZone", "currency", "units", "name"`;
  return head;
}

function penFor(tx: WriteTransaction, act: Act, request: string, head: Head): Pen {
  let line = 0;
  let serial = head.labelSerial;
  const entryId = head.revision;
  return {
    tx,
    now: act.now,
    book: head,
    entryId,
    async mintLabel(kind) {
      const { code } = unwrap(mintOwnLabel(kind, serial));
      serial += 1;
      await tx.book.update({ where: { id: 1 }, data: { labelSerial: serial }, select: { id: true } });
      return code;
    },
    async enter({ alsoStockId, ...fields }, answer) {
      await tx.entry.create({
        data: {
          id: entryId,
          key: act.key,
          request,
          kind: act.kind,
          happenedAt: act.happenedAt ?? act.now,
          writtenAt: act.now,
          who: act.who.who,
          device: act.who.device,
          answer: JSON.stringify(answer ?? null),
          ...fields,
        },
        select: { id: true },
      });
      if (alsoStockId !== undefined) await tx.entryAlso.create({ data: { entryId, stockId: alsoStockId } });
    },
    async move(stockId, change, reversesId) {
      const [row] = await tx.$queryRaw<StockRow[]>`
        SELECT "kind", "quantity", "placeId", "condition", "hold", "ownerJobId", "opened" FROM "Stock"
        WHERE "id" = ${stockId}`;
      if (!row) return err({ code: 'not-found' });
      const applied = applyChange(balanceOf(row), change);
      if (!applied.ok) {
        const { code, ...facts } = applied.error;
        return err({ code, facts });
      }
      const { movement, balance } = applied.value;
      line += 1;
      const lastMovementId = await insertMovement(tx, {
        ...movement,
        entryId,
        key: `${act.key}/${line}`,
        stockId,
        reversesId: reversesId ?? null,
      });
      await tx.$executeRaw`
        UPDATE "Stock" SET "quantity" = ${BigInt(balance.quantity)}, "placeId" = ${balance.placeId},
          "condition" = ${balance.condition}, "hold" = ${balance.hold}, "ownerJobId" = ${balance.jobId},
          "opened" = ${balance.opened}, "lastMovementId" = ${lastMovementId}
        WHERE "id" = ${stockId}`;
      return ok(balance);
    },
  };
}

type NewMovement = MovementFacts & { entryId: number; key: string; stockId: number; reversesId: number | null };

async function insertMovement(tx: WriteTransaction, row: NewMovement): Promise<number> {
  const [inserted] = await tx.$queryRaw<{ id: number }[]>`
    INSERT INTO "Movement" ("entryId", "key", "stockId", "quantityDelta", "placeFromId", "placeToId", "conditionFrom",
      "conditionTo", "holdFrom", "holdTo", "jobFromId", "jobToId", "openedFrom", "openedTo", "reversesId")
    VALUES (${row.entryId}, ${row.key}, ${row.stockId}, ${BigInt(row.quantityDelta)}, ${row.placeFromId}, ${row.placeToId},
      ${row.conditionFrom}, ${row.conditionTo}, ${row.holdFrom}, ${row.holdTo}, ${row.jobFromId}, ${row.jobToId},
      ${row.openedFrom}, ${row.openedTo}, ${row.reversesId})
    RETURNING "id"`;
  if (!inserted) throw new Error('The database did not say which movement it wrote.');
  return inserted.id;
}
