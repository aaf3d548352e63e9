import { addLife } from '@/shared/calendar/add-life';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { firstDayOf, lastDayOf } from '@/shared/calendar/precision';
import { standingInspections } from '@/shared/shelf-life/standing-inspections';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Inspection } from '@/shared/shelf-life/types/inspection';
import type { LabelDate } from '@/shared/shelf-life/types/label-date';
import type { Limit } from '@/shared/shelf-life/types/limit';
import type { PairedPart } from '@/shared/shelf-life/types/reason';

/**
 * Every limit known of a container, in the order of `LIMIT_BASES`, each with what it was computed from.
 *
 * - Printed use-by and best-before: the last day of what is printed; month only is the last day of that month.
 * - Made on + stated life: counted from the *first* day the label can mean, so that the limit is never later than true.
 * - Opened on + opened life: the life printed on the container outranks the policy's.
 * - A start after today cannot be; the life is then counted from today, the latest it can have begun.
 * - A stated life that is a house default gives way to any printed date, earlier or later. One from the label or the data
 *   sheet stands beside it, and the earliest governs. An opened life is another matter than a printed date, which speaks
 *   of the sealed container, so even a house default counts there.
 * - `keeps` states no life; what is printed on the container itself still counts.
 * - A passed inspection sets aside each earlier best-before and stated life; an earlier opened life only when it was made
 *   on this container once opened; a printed use-by never. Nothing is set aside when the material is `fixed`. It never
 *   shortens a limit. Where the lot has no date at all, it is itself the limit.
 * - A test pour that two lots passed together does the same, for a container that is mixed with the other half alone.
 *
 * Example: best before `2026-12` (a month), opened 1 Sep 2026 with an opened life of 3 months: 31 Dec and 1 Dec.
 */
export function limitsOf(
  candidate: Candidate & { readonly today: CalendarDate; readonly pairedWith?: PairedPart },
): readonly Limit[] {
  const { policy, lot, container, today, pairedWith } = candidate;
  const { forLot, forOpened } = policy.kind === 'fixed' ? {} : standingInspections(candidate, today, pairedWith);
  const printed = [printedLimit('use-by', lot.useBy), printedLimit('best-before', lot.bestBefore)].filter(isThere);
  const stated = statedLimit(candidate, printed.length > 0);
  const opened = openedLimit(candidate);

  const extended = [...printed, stated, opened].filter(isThere).map((limit) => {
    const by = limit.basis === 'use-by' ? undefined : limit.basis === 'opened-life' ? forOpened : forLot;
    const reaches = limit.effective && by?.validUntil !== undefined && by.validUntil > limit.lastGoodDay;
    return { limit: reaches ? setAside(limit, 'inspection') : limit, by: reaches ? by : undefined };
  });
  const used = new Set(extended.map((one) => one.by));
  const hasShelfDate = printed.length > 0 || stated !== undefined;
  if (forLot && !hasShelfDate && policy.kind === 'inspectable') used.add(forLot);

  const inspections = [...new Set([forLot, forOpened])].filter(isThere).flatMap((one) => inspectionLimit(one));
  return [
    ...extended.map((one) => one.limit),
    ...inspections.map((limit) =>
      [...used].some((one) => one?.id === limit.from.inspectionId) ? limit : setAside(limit, 'not-needed'),
    ),
  ];

  function statedLimit({ policy, lot }: Candidate, labelSpeaks: boolean): Limit | undefined {
    if (policy.kind === 'keeps' || !policy.statedLife || !lot.madeOn) return undefined;
    const start = notAfter(today, firstDayOf(lot.madeOn.date, lot.madeOn.precision));
    const limit: Limit = {
      basis: 'stated-life',
      lastGoodDay: addLife(start, policy.statedLife),
      from: { start, precision: lot.madeOn.precision, life: policy.statedLife, source: policy.statedLifeBasis },
      effective: true,
    };
    return policy.statedLifeBasis === 'house-default' && labelSpeaks ? setAside(limit, 'printed-date') : limit;
  }

  function openedLimit({ policy }: Candidate): Limit | undefined {
    const life = container.statedOpenedLife ?? (policy.kind === 'keeps' ? undefined : policy.openedLife);
    if (!container.opened || !life) return undefined;
    const start = notAfter(today, container.opened.on);
    const source = container.statedOpenedLife ? 'label' : policy.openedLifeBasis;
    return {
      basis: 'opened-life',
      lastGoodDay: addLife(start, life),
      from: { start, precision: 'day', life, source },
      effective: true,
    };
  }
}

function printedLimit(basis: 'use-by' | 'best-before', label: LabelDate | undefined): Limit | undefined {
  if (!label) return undefined;
  const lastGoodDay = lastDayOf(label.date, label.precision);
  return {
    basis,
    lastGoodDay,
    from: { start: lastGoodDay, precision: label.precision, source: 'label' },
    effective: true,
  };
}

function inspectionLimit(one: Inspection): Limit[] {
  if (!one.validUntil) return [];
  const own = { start: one.on, precision: 'day', source: 'inspection', inspectionId: one.id } as const;
  const from = one.together ? { ...own, together: true as const } : own;
  return [{ basis: 'inspection', lastGoodDay: one.validUntil, from, effective: true }];
}

function setAside(limit: Limit, supersededBy: NonNullable<Limit['supersededBy']>): Limit {
  return { ...limit, effective: false, supersededBy };
}

function notAfter(latest: CalendarDate, date: CalendarDate): CalendarDate {
  return date > latest ? latest : date;
}

function isThere<T>(value: T | undefined): value is T {
  return value !== undefined;
}
