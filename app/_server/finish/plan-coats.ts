import type { Command } from '@/app/_server/act';
import { readFinishSheet } from '@/app/_server/finish/read-finish-sheet';
import { readParts } from '@/app/_server/jobs/read-parts';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { openJob } from '@/app/_server/timeline/open-job';
import { readClosedDays } from '@/app/_server/timeline/read-closed-days';
import { readSteps } from '@/app/_server/timeline/read-steps';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { coatDays } from '@/shared/finish/coat-days';
import { coatedArea } from '@/shared/finish/coated-area';
import { coatsNeed } from '@/shared/finish/coats-need';
import { err, ok } from '@/shared/result/result';
import { bearsOn } from '@/shared/timeline/bears-on';
import { openDay } from '@/shared/timeline/closed-days';
import { inStockUnit } from '@/shared/units/in-stock-unit';
import type { StockUnit } from '@/shared/units/stock-unit';

/**
 * Coats of one finish: on these parts, or on an area given in square millimetres. On one part they are that part's steps;
 * on several at once, or on none, the whole job's.
 */
export type PlanCoats = {
  jobId: number;
  productId: number;
  partIds: number[];
  faces: 1 | 2;
  areaMm2: number | null;
  coats: number;
  /** Tenths of a square metre a litre; left out, what the sheet says. */
  coverageTenths: number | null;
  lossPercent: number;
  firstDay: CalendarDate;
};

export type PlannedCoats = {
  entryId: number;
  days: CalendarDate[];
  curedOn: CalendarDate | null;
  /** Of each coat, in the unit the product is counted in. */
  each: number;
  unit: StockUnit;
};

/**
 * Puts the coats of a finish on a job's time line, each on the first open day the sheet lets it be coated, with what it
 * needs of the product; and the day it is cured, where the sheet says. Coats of the same finish that stand already are
 * counted on from, of the same part. Undone as a whole by reversing the entry.
 */
export const planCoats: Command<PlanCoats, PlannedCoats> = (book, by, input) =>
  writeEntry<PlannedCoats>(book, { ...by, kind: 'coats-planned', request: input }, async (pen) => {
    const { jobId, productId } = input;
    const job = await openJob(pen.tx, jobId);
    if (!job.ok) return job;
    const product = await pen.tx.product.findUnique({
      where: { id: productId },
      select: { name: true, unit: true, densityGramsPerLitre: true },
    });
    if (!product) return err({ code: 'not-found', field: 'productId' });
    const sheet = (await readFinishSheet(pen.tx, productId)) ?? { from: 'typed' as const };
    const coverageTenths = input.coverageTenths ?? sheet.coverageTenths;
    if (coverageTenths === undefined)
      return err({ code: 'no-coverage', field: 'coverage', facts: { product: product.name } });

    const parts = (await readParts(pen.tx, jobId)).filter(({ id }) => input.partIds.includes(id));
    if (parts.length < new Set(input.partIds).size) return err({ code: 'part-gone', field: 'partIds' });
    const partId = parts.length === 1 ? (parts[0]?.id ?? null) : null;
    if (input.areaMm2 === null && parts.length === 0)
      return err({ code: 'area-unknown', field: 'area', facts: { part: null } });
    const areas = parts.map((part) => coatedArea(part, input.faces));
    const unknown = parts[areas.indexOf(undefined)];
    if (input.areaMm2 === null && unknown)
      return err({ code: 'area-unknown', field: 'area', facts: { part: unknown.name } });
    const areaMm2 = input.areaMm2 ?? areas.reduce<number>((sum, area) => sum + (area ?? 0), 0);
    const need = coatsNeed({ areaMm2, coats: input.coats, coverageTenths, lossPercent: input.lossPercent });
    if (!need.ok) return err({ code: 'outside-range', field: FIELD_OF[need.error.field] });
    const unit = product.unit as StockUnit;
    const each = inStockUnit(need.value.each, 'uL', unit, product.densityGramsPerLitre);
    if (!each.ok) {
      return err(
        each.error.code === 'no-density'
          ? { code: 'no-density', field: 'productId', facts: { product: product.name } }
          : { code: 'unit-does-not-fit', field: 'productId' },
      );
    }
    const closed = await readClosedDays(pen.tx);
    const planned = coatDays(input.coats, input.firstDay, sheet, (day) => openDay(day, closed));
    if (!planned.ok) return err({ code: 'outside-range', field: 'coats' });

    const there = (await readSteps(pen.tx, jobId)).filter(
      (step) => step.kind === 'coat' && step.productId === productId && bearsOn(step, { partId }),
    );
    const from = Math.max(0, ...there.map(({ coatNr }) => coatNr ?? 0));
    const { coats, curedOn } = planned.value;
    const answer: PlannedCoats = {
      entryId: pen.entryId,
      days: coats.map(({ on }) => on),
      curedOn: curedOn ?? null,
      each: each.value,
      unit,
    };
    const on = parts.length > 0 ? ` on ${parts.map(({ name }) => name).join(', ')}` : '';
    const why = `${coats.length} × ${product.name}${on}: ${answer.days.join(', ')}`;
    await pen.enter({ jobId, productId, why }, answer);
    // One lot is wanted for all the coats of one surface.
    const surface = parts.map(({ name }) => name).join(', ') || job.value.name;
    for (const [nr, { on: day, joins }] of coats.entries()) {
      const coatNr = from + nr + 1;
      const step = await pen.tx.step.create({
        data: {
          jobId,
          entryId: pen.entryId,
          kind: 'coat',
          name: `${product.name}, coat ${coatNr}`,
          day,
          sort: coatNr,
          partId,
          productId,
          coatNr,
          note: joins === 'sand-first' ? 'Sand it first.' : '',
        },
        select: { id: true },
      });
      await pen.tx.need.create({
        data: {
          jobId,
          entryId: pen.entryId,
          stepId: step.id,
          partId,
          kind: 'material',
          productId,
          unit,
          amount: BigInt(each.value),
          surface: `${product.name} on ${surface}`,
        },
        select: { id: true },
      });
    }
    if (curedOn) {
      await pen.tx.step.create({
        data: {
          jobId,
          entryId: pen.entryId,
          kind: 'cure',
          name: `${product.name} cured`,
          day: curedOn,
          partId,
          productId,
        },
        select: { id: true },
      });
    }
    await keepDayOfUse(pen.tx, jobId);
    return ok(answer);
  });

const FIELD_OF = { areaMm2: 'area', coats: 'coats', coverageTenths: 'coverage', lossPercent: 'loss' } as const;
