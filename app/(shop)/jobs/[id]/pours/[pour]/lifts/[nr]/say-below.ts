import { sayLift } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { joinAt, type LiftBelow } from '@/shared/pour/join-at';

/** How the lift below stands now, and what that asks for. */
export function sayBelow(below: LiftBelow, now: number): string {
  const { joins, hours } = joinAt(below, now);
  const { againFromHours: from, againToHours: to } = below;
  const ago = `${sayLift(below.nr)} below was poured ${below.isExact ? '' : 'about '}${sayHours(hours)} ago`;
  if (joins === 'too-early') {
    const left = Math.ceil(((from ?? 0) - hours) * 10) / 10;
    return `Too early. ${ago}; the sheet says from ${from} hours. The heat of both adds up, and it can crack, smoke or burn: wait another ${sayHours(left)}. The sheet goes before this card.`;
  }
  if (joins === 'while-tacky') {
    const window = from === undefined ? `up to ${to} hours` : `from ${from} to ${to} hours`;
    return `${ago}. The sheet says ${window}: while it is tacky the two cure into each other.`;
  }
  const why =
    to === undefined
      ? 'The sheet names no time in which the next one bonds by itself'
      : `Past the sheet’s ${to} hours the next one does not bond by itself`;
  return `${ago}. ${why}: sand it dull with a dust mask on, and wipe it clean.`;
}

/** Whether all is said of the lift below that must be, before something is weighed or poured on it. */
export function isBelowReady(
  below: LiftBelow | null,
  now: number,
  said: { sanded?: boolean; early?: string },
): boolean {
  const joins = below && joinAt(below, now).joins;
  if (joins === 'too-early') return Boolean(said.early?.trim());
  return joins !== 'sand-first' || Boolean(said.sanded);
}

const sayHours = (hours: number) => (hours < 1 ? 'less than an hour' : `${hours} ${hours === 1 ? 'hour' : 'hours'}`);
