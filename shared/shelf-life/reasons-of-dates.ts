import { daysBetween } from '@/shared/calendar/days-between';
import { governingLimit } from '@/shared/shelf-life/governing-limit';
import { judgedDay } from '@/shared/shelf-life/judged-day';
import { reasonsOfContradiction, reasonsOfUnconfirmed } from '@/shared/shelf-life/reasons-of-facts';
import { standingInspections } from '@/shared/shelf-life/standing-inspections';
import type { Limit } from '@/shared/shelf-life/types/limit';
import type { Reason } from '@/shared/shelf-life/types/reason';
import type { JudgeInput } from '@/shared/shelf-life/types/verdict';

/**
 * The reasons that come from dates. For a client's piece a passed limit, an unknown date or a failed inspection stops; for
 * the maker's own piece or a test it asks for care.
 *
 * The day meant below is the day of use, or today where that day has passed.
 *
 * - Past: one reason for each effective limit before that day. The last good day itself is good.
 * - Unknown: the material is not one that keeps, and neither a printed date, a stated life nor a valid inspection covers
 *   it. An opened life alone does not: it says nothing of how old the container was when it was opened.
 * - Near: the governing limit is within the care window after that day, both ends included.
 * - Extended: only when that day relies on the inspection, that is, the limit it set aside is past, or there is none.
 * - Opened life unknown: opened, no opened life known, and no inspection of the opened container covers the day.
 * - A failed inspection that stands is a reason whatever the label says; of the very pair it is one of `reasonsOfTrials`.
 * - A day of use before today asks for care: it was judged for another day than the one asked.
 */
export function reasonsOfDates(input: JudgeInput, limits: readonly Limit[]): Reason[] {
  const { policy, container, purpose, dayOfUse, today } = input;
  const day = judgedDay(input);
  const weight = purpose === 'client' ? 'stop' : 'care';
  const inForce = limits.filter((limit) => limit.effective);
  const bases = new Set(inForce.map((limit) => limit.basis));
  const standing = standingInspections(input, today, input.pairedWith);
  const governing = governingLimit(limits);
  const reasons: Reason[] = [];

  for (const limit of inForce) {
    const daysPast = daysBetween(limit.lastGoodDay, day);
    if (daysPast > 0) reasons.push({ code: 'past-limit', weight, limit, daysPast });
  }
  if (policy.kind !== 'keeps' && !hasShelfDate(limits) && !bases.has('inspection')) {
    reasons.push({ code: 'date-unknown', weight });
  }

  const { failed } = standing;
  if (failed) {
    const reason = { code: 'inspection-failed', weight, on: failed.on, kind: failed.kind } as const;
    reasons.push(failed.together ? { ...reason, together: true } : reason);
  }

  if (governing) {
    const daysLeft = daysBetween(day, governing.lastGoodDay);
    if (daysLeft >= 0 && daysLeft <= policy.careWindowDays) {
      reasons.push({ code: 'limit-near', weight: 'care', limit: governing, daysLeft });
    }
    if (governing.from.source === 'house-default')
      reasons.push({ code: 'house-default', weight: 'note', limit: governing });
  }

  const { opened } = container;
  if (opened) {
    const lifeKnown = limits.some((limit) => limit.basis === 'opened-life');
    const inspectedOpen = policy.kind === 'inspectable' && (standing.forOpened?.validUntil ?? '') >= day;
    if (!lifeKnown && !inspectedOpen && policy.kind !== 'keeps') {
      reasons.push({ code: 'opened-life-unknown', weight: 'care', on: opened.on });
    }
    if (opened.sureness === 'guessed' && (bases.has('opened-life') || (!lifeKnown && policy.kind !== 'keeps'))) {
      reasons.push({ code: 'opened-day-guessed', weight: 'care', on: opened.on });
    }
  }

  reasons.push(...reasonsOfExtension(input, limits, governing));
  reasons.push(...reasonsOfUnconfirmed(input, bases), ...reasonsOfContradiction(input, today));
  if (dayOfUse < today) reasons.push({ code: 'day-of-use-past', weight: 'care', dayOfUse });
  return reasons;
}

function reasonsOfExtension(input: JudgeInput, limits: readonly Limit[], governing: Limit | undefined): Reason[] {
  const { policy, today, pairedWith } = input;
  const day = judgedDay(input);
  const inspections = limits.filter((limit) => limit.basis === 'inspection' && limit.effective);
  const setAside = governingLimit(
    limits.filter((limit) => limit.supersededBy === 'inspection').map((limit) => ({ ...limit, effective: true })),
  );
  const relied = inspections.find((limit) => limit.lastGoodDay >= day);
  const pastOne = setAside !== undefined && setAside.lastGoodDay < day;
  if (relied && (pastOne || !hasShelfDate(limits))) {
    const wasPast = (limit: Limit) => limit.supersededBy === 'inspection' && limit.basis === setAside?.basis;
    const instead = pastOne ? limits.find(wasPast) : undefined;
    const carried = { code: 'extended-by-inspection', weight: 'care', limit: relied, instead } as const;
    return [relied.from.together && pairedWith ? { ...carried, other: pairedWith.label } : carried];
  }

  const passed = standingInspections(input, today, pairedWith).forLot;
  const cannotExtend = policy.kind === 'fixed' || governing?.basis === 'use-by' || governing?.basis === 'opened-life';
  const wouldReach = passed?.validUntil !== undefined && passed.validUntil >= day;
  if (!governing || governing.lastGoodDay >= day || !cannotExtend || !wouldReach) return [];
  const note = { code: 'inspection-does-not-extend', weight: 'note', limit: governing } as const;
  return [passed.together && pairedWith ? { ...note, other: pairedWith.label } : note];
}

function hasShelfDate(limits: readonly Limit[]): boolean {
  return limits.some(({ basis }) => basis === 'use-by' || basis === 'best-before' || basis === 'stated-life');
}
