import { randomUUID } from 'node:crypto';
import Database from 'better-sqlite3';
import { PAGE } from '@/app/_server/find/on-hand';
import { bookFiles } from '@/prisma/book-files';

/**
 * The same questions in bare SQL over the driver alone: what `npm run bench` measures the real routes against, in the
 * same server over the same network. Statements are prepared once. Only there when the server was started for it.
 */
export type Bare = { [What in 'verdict' | 'on-hand' | 'weigh']: (ask: URLSearchParams) => unknown };

const holder = globalThis as { flitchbookBare?: Bare };

export function bare(): Bare {
  holder.flitchbookBare ??= prepare();
  return holder.flitchbookBare;
}

/** The character after every letter and digit: the end of a prefix's range. */
const AFTER = '\u{10FFFF}';

const CONTAINER = `SELECT c.*, s.label, s.quantity, s.condition, s.hold, s.opened, pl.name AS place, up.name AS inside,
    l.code, l.madeOn, l.madePrecision, l.madeConfirmed, l.bestBefore, l.bestPrecision, l.bestConfirmed, l.useBy,
    l.usePrecision, l.useConfirmed, ls.hold AS lotHold, p.name, p.maker, p.kind, p.unit, p.policyKind, p.statedLifeCount,
    p.statedLifeUnit, p.statedLifeBasis, p.openedLifeCount AS openedCount, p.openedLifeUnit AS openedUnit,
    p.openedLifeBasis, p.careWindowDays, p.freezingRuins, p.storageLeastTenthsC, p.storageMostTenthsC, p.colourShows,
    p.part, p.systemId, p.hazards, p.safetySheet, p.densityGramsPerLitre
  FROM Container c JOIN Stock s ON s.id = c.stockId JOIN Lot l ON l.stockId = c.lotId JOIN Stock ls ON ls.id = c.lotId
  JOIN Product p ON p.id = c.productId LEFT JOIN Place pl ON pl.id = s.placeId LEFT JOIN Place up ON up.id = pl.parentId`;

const ids = (kind: string) => `SELECT value FROM json_each(@ids, '$.${kind}')`;

const LIVE = 'JOIN Stock s ON s.id = stockId WHERE s.quantity > 0 AND';
const HIT = `SELECT stockId AS id FROM Container ${LIVE} productId IN (${ids('product')})
    UNION ALL SELECT stockId FROM Container ${LIVE} lotId IN (${ids('lot')}) AND productId NOT IN (${ids('product')})
    UNION ALL SELECT stockId FROM Container ${LIVE} stockId IN (${ids('container')}) AND lotId NOT IN (${ids('lot')})
      AND productId NOT IN (${ids('product')})
    UNION ALL SELECT s.id FROM Stock s JOIN Container ON stockId = s.id WHERE s.kind = 'container'
      AND s.quantity > 0 AND placeId IN (${ids('place')}) AND s.id NOT IN (${ids('container')})
      AND lotId NOT IN (${ids('lot')}) AND productId NOT IN (${ids('product')})`;

/** How many containers of `@ids` (ids by kind, JSON) have something left, counted to 501. */
const COUNT = `SELECT COUNT(*) AS total FROM (SELECT 1 FROM (${HIT}) LIMIT 501)`;

const rows = (page: string) =>
  `WITH page AS (${page}) ${CONTAINER} JOIN page ON page.id = c.stockId ORDER BY p.name, p.id, c.stockId`;

/** The first page of them by product, all of them put in order, and how many there are. */
const SORTED = rows(`SELECT c.stockId AS id, COUNT(*) OVER () AS total FROM (${HIT}) hit
    JOIN Container c ON c.stockId = hit.id JOIN Product p ON p.id = c.productId ORDER BY p.name, p.id, c.stockId LIMIT ${PAGE + 1}`);

/** The first page of what many products have, walked in their order. */
const WALKED = rows(`SELECT c.stockId AS id FROM Product p CROSS JOIN Container c CROSS JOIN Stock s
    WHERE c.productId = p.id AND s.id = c.stockId AND s.quantity > 0 AND +p.id IN (${ids('product')})
    ORDER BY p.name, p.id, c.stockId LIMIT ${PAGE + 1}`);

function prepare(): Bare {
  const db = new Database(bookFiles().database, { timeout: 5000 });
  for (const pragma of ['foreign_keys = ON', 'synchronous = FULL', 'cache_size = -65536']) db.pragma(pragma);
  const all = (sql: string) => {
    const statement = db.prepare(sql);
    return (...values: unknown[]) => statement.all(...values) as Record<string, number | string | null>[];
  };
  const head = all('SELECT * FROM Book WHERE id = 1');
  const container = all(`${CONTAINER} WHERE s.label = ?`);
  const inspections = all('SELECT * FROM Inspection WHERE lotId = ? ORDER BY id');
  const sisters = all(
    `${CONTAINER} WHERE c.productId = ? AND c.stockId <> ? AND s.quantity > 0 ORDER BY c.stockId LIMIT 500`,
  );
  const labels = all(
    "SELECT id FROM Stock WHERE label >= ? AND label < ? AND kind = 'container' AND quantity > 0 LIMIT 500",
  );
  const word = all('SELECT DISTINCT refId AS id FROM SearchWord WHERE kind = ? AND word >= ? AND word < ? LIMIT 500');
  const both =
    all(`SELECT DISTINCT a.refId AS id FROM SearchWord a WHERE kind = ? AND word >= ? AND word < ? AND EXISTS (
    SELECT 1 FROM SearchWord b WHERE b.kind = a.kind AND b.refId = a.refId AND b.word >= ? AND b.word < ?) LIMIT 500`);
  const [count, sorted, walked] = [all(COUNT), all(SORTED), all(WALKED)];
  return { verdict, 'on-hand': onHand, weigh: weigher(db) };

  function verdict(ask: URLSearchParams) {
    const [line] = container(ask.get('code'));
    const others = ask.get('others') === '1' ? sisters(line?.productId, line?.stockId) : [];
    return { book: head(), line, inspections: inspections(line?.lotId), others };
  }

  function onHand(ask: URLSearchParams) {
    const query = ask.get('q') ?? '';
    const words = query.split(' ').sort((a, b) => b.length - a.length);
    const range = words.slice(0, 2).flatMap((each) => [each, each + AFTER]);
    const found = Object.fromEntries(
      ['product', 'lot', 'piece', 'place', 'job'].map((kind) => [
        kind,
        (words.length > 1 ? both : word)(kind, ...range).map((row) => row.id),
      ]),
    );
    const label = query.toUpperCase();
    const container = /^C[0-9A-Z]{1,6}$/.test(label) ? labels(label, label + AFTER).map((row) => row.id) : [];
    const asked = { ids: JSON.stringify({ ...found, container }) };
    // As the app goes about it: the questions of the bench find products, or lots, or a place, never two of them.
    const total = found.product?.length ? count(asked)[0]?.total : undefined;
    return { found, total, rows: Number(total) > 500 ? walked(asked) : sorted(asked) };
  }
}

/** A weighing: the entry, the movement, the balance, in one transaction as durable as the book's own. */
function weigher(db: Database.Database): Bare['weigh'] {
  const stock = db.prepare('SELECT * FROM Stock WHERE label = ?');
  const pen = db.prepare('UPDATE Book SET revision = revision + 1 WHERE id = 1 RETURNING revision');
  const entry = db.prepare(`INSERT INTO Entry (id, key, request, kind, happenedAt, writtenAt, who, device, answer)
    VALUES (?, ?, '', 'weighed', ?, ?, 'Maker', 'bench', '{}')`);
  const movement = db.prepare(`INSERT INTO Movement (entryId, key, stockId, quantityDelta, placeFromId, placeToId,
    conditionFrom, conditionTo, holdFrom, holdTo, openedFrom, openedTo) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`);
  const balance = db.prepare('UPDATE Stock SET quantity = ?, lastMovementId = ? WHERE id = ?');
  const write = db.transaction((label: string, left: number) => {
    const s = stock.get(label) as Record<string, number | string | null>;
    const { revision } = pen.get() as { revision: number };
    const now = new Date().toISOString().replace('Z', '+00:00');
    const key = randomUUID();
    entry.run(revision, key, now, now);
    const same = [s.placeId, s.placeId, s.condition, s.condition, s.hold, s.hold, s.opened, s.opened];
    const { lastInsertRowid } = movement.run(revision, `${key}/1`, s.id, left - Number(s.quantity), ...same);
    balance.run(left, lastInsertRowid, s.id);
    return { label, delta: left - Number(s.quantity) };
  });
  return (ask) => write.immediate(ask.get('label') ?? '', Number(ask.get('left')));
}
