import { readBook } from '@/app/_server/book/read-book';
import { theBook } from '@/app/_server/book/the-book';
import type { Refusal } from '@/app/_server/refusal';
import { containerLine, judgeableSelect } from '@/app/_server/stock/judgeable';
import { labelKindOf } from '@/app/_server/stock/label-kind-of';
import { pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { lastDayOf } from '@/shared/calendar/precision';
import { sayDate } from '@/shared/calendar/say-date';
import type { LabelContent } from '@/shared/labels/label-content';
import { err, ok, type Result } from '@/shared/result/result';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { LabelDate } from '@/shared/shelf-life/types/label-date';
import { printQuantity } from '@/shared/units/print-quantity';
import { packFigures, sayPackSize } from '@/shared/wood/pack-figures';
import { sayPieceSize } from '@/shared/wood/say-piece-size';

/** What stands on the labels with these codes, in the order asked; refuses the first one the book never gave. */
export async function labelContentFor(codes: string[]): Promise<Result<LabelContent[], Refusal>> {
  const book = await theBook();
  const head = await readBook(book, new Date());
  if (!head) return err({ code: 'no-book-yet' });
  const labels: string[] = [];
  for (const code of codes) {
    const parsed = parseOwnLabel(code);
    if (!parsed.ok) return err({ code: 'not-found', facts: { label: code } });
    labels.push(parsed.value.code);
  }
  const where = { stock: { label: { in: labels } } };
  const [containers, pieces, places] = await Promise.all([
    book.read.container.findMany({ where, select: judgeableSelect }),
    book.read.piece.findMany({ where, select: pieceSelect }),
    book.read.place.findMany({
      where: { label: { in: labels } },
      select: { label: true, name: true, kind: true, parent: { select: { name: true } } },
    }),
  ]);
  const { units: prefer, dateOrder: order } = head;
  const contents = new Map<string, LabelContent>();
  for (const row of containers) {
    const line = containerLine(row);
    const { lot } = line.candidate;
    contents.set(line.label, {
      code: printOwnLabel(line.label),
      kind: 'container',
      title: line.product,
      lines: [
        `${line.lotCode ? `lot ${line.lotCode}` : 'no lot printed'}, ${printQuantity(line.size, line.unit, { prefer })}`,
        datesLine(lot, order),
        line.candidate.container.opened
          ? `opened ${sayDate(line.candidate.container.opened.on, { order })}`
          : 'opened ____________',
      ],
    });
  }
  for (const row of pieces) {
    const line = pieceLine(row);
    const flitch = line.flitch
      ? `flitch ${line.flitch}${line.flitchNumber === null ? '' : `, ${line.flitchNumber}`}`
      : '';
    contents.set(line.label, {
      code: printOwnLabel(line.label),
      kind: labelKindOf(line.form),
      title: `${line.species} ${line.form}`,
      lines: [
        line.facts.flags.includes('strapped') ? 'STRAPPED' : '',
        line.form === 'pack' ? sayPackSize(packFigures(line)) : sayPieceSize(line, { prefer }),
        flitch,
        `in ${sayDate(line.receivedOn, { order })}`,
      ].filter(Boolean),
    });
  }
  for (const place of places) {
    contents.set(place.label, {
      code: printOwnLabel(place.label as OwnLabelCode),
      kind: 'place',
      title: place.name,
      lines: place.parent ? [place.parent.name] : [],
    });
  }
  const missing = labels.find((label) => !contents.has(label));
  if (missing) return err({ code: 'not-found', facts: { label: missing } });
  return ok(labels.flatMap((label) => contents.get(label) ?? []));
}

type LabelDates = { useBy?: LabelDate; bestBefore?: LabelDate; madeOn?: LabelDate };

function datesLine({ useBy, bestBefore, madeOn }: LabelDates, order: DateOrder): string {
  if (useBy) return `use by ${sayDate(lastDayOf(useBy.date, useBy.precision), { order })}`;
  if (bestBefore) return `best before ${sayDate(lastDayOf(bestBefore.date, bestBefore.precision), { order })}`;
  if (madeOn) return `made ${sayDate(madeOn.date, { order })}`;
  return 'no date printed';
}
