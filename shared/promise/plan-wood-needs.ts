import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { MinorUnits } from '@/shared/units/minor-units';
import { plainName } from '@/shared/wood/plain-name';

/** Pieces of wood that a job needs on a day; '' and none where anything will do. Lengths in nanometres. */
export type WoodNeed = {
  readonly id: number;
  readonly jobId: number;
  readonly on: CalendarDate;
  /** Pieces. */
  readonly amount: number;
  readonly species: string;
  readonly form: string;
  readonly lengthNm?: number | undefined;
  readonly widthNm?: number | undefined;
  readonly thicknessNm?: number | undefined;
};

/** A piece on hand, or taken into a job already. */
export type WoodOnHand = {
  readonly stockId: number;
  readonly label: string;
  readonly species: string;
  readonly form: string;
  readonly lengthNm: number;
  /** At its narrowest. */
  readonly widthNm: number;
  readonly thicknessNm: number;
  /** On hold, in quarantine or recalled. */
  readonly held: boolean;
  readonly taken: boolean;
  /** The job it is promised to or was taken into. */
  readonly jobId?: number | undefined;
  readonly cost?: MinorUnits | undefined;
};

/** An order of wood, in words. */
export type WoodComing = {
  readonly id: number;
  readonly words: string;
  readonly amount: number;
  readonly on: CalendarDate;
};

type WoodPart = { readonly stockId: number; readonly label: string; readonly cost?: MinorUnits | undefined };

export type WoodStanding = {
  readonly needId: number;
  readonly used: readonly WoodPart[];
  readonly reserved: readonly WoodPart[];
  /** Promised to the job, and on hold. */
  readonly failing: readonly WoodPart[];
  /** Free: what a press would promise, the smallest that is large enough first. */
  readonly have: readonly WoodPart[];
  /** `stockId`: one of the things, for its refusal to be told. */
  readonly elsewhere: readonly { readonly jobId: number; readonly amount: number; readonly stockId: number }[];
  readonly arriving: readonly { readonly id: number; readonly amount: number; readonly on: CalendarDate }[];
  readonly short: number;
};

/**
 * Whether a piece will do for a need: the wood and the form that are named, and no smaller than the sizes that are given,
 * its width at the narrowest. A pack of boards is counted only where a pack is asked for.
 */
export function willDo(
  piece: Pick<WoodOnHand, 'species' | 'form' | 'lengthNm' | 'widthNm' | 'thicknessNm'>,
  need: Pick<WoodNeed, 'species' | 'form' | 'lengthNm' | 'widthNm' | 'thicknessNm'>,
): boolean {
  const form = need.form === '' ? piece.form !== 'pack' : piece.form === need.form;
  const species = need.species === '' || plainName(piece.species) === plainName(need.species);
  return (
    form &&
    species &&
    piece.lengthNm >= (need.lengthNm ?? 0) &&
    piece.widthNm >= (need.widthNm ?? 0) &&
    piece.thicknessNm >= (need.thicknessNm ?? 0)
  );
}

/**
 * How each need of wood stands, the earliest day first. A piece serves one need. Of what is free the smallest that is large
 * enough goes first, by the area of its length and narrowest width, then the cheaper, then by label. An order, which is
 * kept in words, counts where its words name the wood that is needed.
 */
export function planWoodNeeds(
  needs: readonly WoodNeed[],
  pieces: readonly WoodOnHand[],
  coming: readonly WoodComing[],
  today: CalendarDate,
): WoodStanding[] {
  const order = [...needs].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.id - b.id));
  const bySize = [...pieces].sort(
    (a, b) =>
      a.lengthNm * a.widthNm - b.lengthNm * b.widthNm ||
      (a.cost ?? Number.MAX_SAFE_INTEGER) - (b.cost ?? Number.MAX_SAFE_INTEGER) ||
      (a.label < b.label ? -1 : 1),
  );
  const spent = new Set<number>();
  const orders = coming.filter((each) => each.on >= today).map((each) => ({ ...each, left: each.amount }));
  const standings = order.map((need): WoodStanding => {
    const on = need.on < today ? today : need.on;
    let missing = need.amount;
    const choose = (fits: (piece: WoodOnHand) => boolean, counts = true) => {
      const chosen: WoodPart[] = [];
      for (const piece of bySize) {
        if (counts && missing === 0) break;
        if (spent.has(piece.stockId) || !fits(piece) || !willDo(piece, need)) continue;
        spent.add(piece.stockId);
        if (counts) missing -= 1;
        chosen.push({ stockId: piece.stockId, label: piece.label, cost: piece.cost });
      }
      return chosen;
    };
    const used = choose((piece) => piece.taken && piece.jobId === need.jobId);
    const reserved = choose((piece) => !piece.taken && !piece.held && piece.jobId === need.jobId);
    const failing =
      missing > 0 ? choose((piece) => !piece.taken && piece.held && piece.jobId === need.jobId, false) : [];
    const have = choose((piece) => !piece.taken && !piece.held && piece.jobId === undefined);
    const elsewhere = new Map<number, { amount: number; stockId: number }>();
    for (const piece of pieces) {
      if (piece.taken || piece.held || piece.jobId === undefined || piece.jobId === need.jobId) continue;
      if (!willDo(piece, need)) continue;
      const known = elsewhere.get(piece.jobId) ?? { amount: 0, stockId: piece.stockId };
      elsewhere.set(piece.jobId, { ...known, amount: known.amount + 1 });
    }
    const arriving: { id: number; amount: number; on: CalendarDate }[] = [];
    for (const order of orders) {
      const amount = Math.min(order.left, missing);
      if (amount <= 0 || order.on > on || !names(order.words, need)) continue;
      order.left -= amount;
      missing -= amount;
      arriving.push({ id: order.id, amount, on: order.on });
    }
    return {
      needId: need.id,
      used,
      reserved,
      failing,
      have,
      elsewhere: [...elsewhere].map(([jobId, held]) => ({ jobId, ...held })),
      arriving,
      short: missing,
    };
  });
  return needs.flatMap((need) => standings.find((each) => each.needId === need.id) ?? []);
}

/** Whether the words of an order name the wood of a need. An order that names none serves a need that asks for none. */
function names(words: string, { species }: WoodNeed): boolean {
  return species === '' || ` ${plainName(words)} `.includes(` ${plainName(species)} `);
}
