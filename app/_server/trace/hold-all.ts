import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { leftOf } from '@/app/_server/trace/holdable';
import { type Traced, type TraceStart, traceFrom } from '@/app/_server/trace/trace-from';
import { err, ok } from '@/shared/result/result';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

export type HoldAll = TraceStart & {
  /** Also what else the lots that were found went into. */
  wide: boolean;
  why: string;
};

type HeldThing = { stockId: number; label: string; title: string };

/** `held`: what was free and is on hold now; `lots`: the lots that are, and with them what of them is still to come. */
export type HeldAll = { entryId: number; held: HeldThing[]; lots: { stockId: number; code: string; title: string }[] };

/** What is held is not left out for want of room on a screen. */
const MOST_HELD = 8_000;

/**
 * Puts all that is left of a trace on hold, as one entry with its reason: the containers with something in them, the
 * sealed ones of the same lot among them, the pieces still in the shop, and the lots themselves, so that a container that
 * comes in later is held by its lot. What is held already stays as it is held. The trace is read again here, so that what
 * came meanwhile is held too.
 */
export const holdAll: Command<HoldAll, HeldAll> = (book, by, input) =>
  writeEntry<HeldAll>(book, { ...by, kind: 'trace-held', request: input }, async (pen) => {
    const why = input.why.trim();
    if (why === '') return err({ code: 'reason-needed', field: 'why' });
    const traced = await traceFrom(pen.tx, input, { wide: input.wide, most: MOST_HELD });
    if (!traced) return err({ code: 'not-found' });
    const { free, freeLots } = leftOf(traced);
    if (free.length + freeLots.length === 0) return err({ code: 'nothing-to-hold' });
    const held = free.map(({ id, label, title }) => ({ stockId: id, label: label ?? '', title }));
    const lots = freeLots.map(({ id, code, title }) => ({ stockId: id, code: code ?? '', title }));
    const answer = { entryId: pen.entryId, held, lots };
    await pen.enter({ why, reference: sayStart(traced), ...aboutOf(traced) }, answer);
    for (const { stockId } of [...lots, ...held]) {
      const moved = await pen.move(stockId, { hold: 'on-hold' });
      if (!moved.ok) return moved;
    }
    return ok(answer);
  });

/** What it began from, in words that still say it when the book has moved on. */
function sayStart({ start: { kind, title, label, code, nr } }: Traced): string {
  if (kind === 'lot') return code ? `lot ${code} of ${title}` : `a lot of ${title}`;
  const shown = printOwnLabel((label ?? '') as OwnLabelCode);
  if (kind === 'container') return `${shown} of ${title}`;
  if (kind === 'piece') return `${shown}, ${title}`;
  if (kind === 'lift') return nr === 0 ? `the seal coat of ${title}` : `lift ${nr} of ${title}`;
  if (kind === 'sample') return `the sample ${title}`;
  return kind === 'fault' ? `a fault: ${title.replace('-', ' ')}` : title;
}

function aboutOf({ start: { kind, id } }: Traced): { stockId?: number; jobId?: number } {
  if (kind === 'job') return { jobId: id };
  return kind === 'lot' || kind === 'container' || kind === 'piece' ? { stockId: id } : {};
}
