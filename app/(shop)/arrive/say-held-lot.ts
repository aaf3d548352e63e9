import type { HoldState } from '@/shared/shelf-life/types/lot-facts';

const HELD: Readonly<Record<Exclude<HoldState, 'free'>, { is: string; toDo: string }>> = {
  'on-hold': { is: 'on hold', toDo: 'Put it apart. Nothing of it goes into a job until the lot is released.' },
  quarantine: { is: 'in quarantine', toDo: 'Put it apart. Nothing of it goes into a job until the lot is released.' },
  recalled: { is: 'recalled', toDo: 'Do not use it. Put it apart and follow the recall.' },
};

export type HeldLot = { code: string; hold: HoldState; because: string };

/** That the lot of what arrives is held, why, and what to do with it at the door; undefined where it is free. */
export function sayHeldLot({ code, hold, because }: HeldLot): readonly [string, string] | undefined {
  const held = hold === 'free' ? undefined : HELD[hold];
  if (!held) return undefined;
  const why = because.trim();
  return [
    `${code ? `Lot ${code}` : 'Its lot'} is ${held.is}${why ? `: ${why.replace(/[.!?]$/, '')}` : ''}.`,
    held.toDo,
  ];
}
