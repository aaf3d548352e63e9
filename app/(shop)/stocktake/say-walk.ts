import type { WalkThing } from '@/app/_server/stocktake/walk-of';
import type { VerdictWord } from '@/app/_ui/verdict/word';
import type { WalkChoice } from '@/shared/stocktake/choices-of';
import type { WalkStatus } from '@/shared/stocktake/compare-walk';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What a walk says of a thing: the verdict's mark, the words of its pill, and the sentence beside it. */
export type SaidThing = { word: VerdictWord; says: string; why: string };

/** The lines of a comparison that ask for a decision, in the order they are shown, with their titles. */
export const DIFFERENCES: readonly { status: WalkStatus; title: string }[] = [
  { status: 'missing', title: 'Nobody saw it' },
  { status: 'different', title: 'More or less in it' },
  { status: 'extra', title: 'Stands elsewhere by the book' },
  { status: 'back', title: 'Gone by the book' },
  { status: 'changed', title: 'Changed since it was looked at' },
];

const amount = (size: number, unit: StockUnit, prefer: UnitSystem) =>
  printQuantity(amountOf(unit, size), unit, { prefer });

/** The amount a thing differs by, with more or less: `400 g less`. */
export function sayDelta(delta: number, unit: StockUnit, prefer: UnitSystem): string {
  return `${amount(Math.abs(delta), unit, prefer)} ${delta < 0 ? 'less' : 'more'}`;
}

/** Says one thing of a walk. */
export function sayThing(thing: WalkThing, prefer: UnitSystem): SaidThing {
  const { status, unit, quantity, delta, place, seen, changedBy, ownerJob, kind } = thing;
  const by = seen ? ` Seen by ${seen.by}.` : '';
  const promised = ownerJob ? ` It is promised to ${ownerJob.name}.` : '';
  const counted = seen?.counted === null || seen?.counted === undefined ? '' : amount(seen.counted, unit, prefer);
  switch (status) {
    case 'here':
      return {
        word: 'use',
        says: 'here',
        why: `${counted ? `${counted} in it, as the book has it.` : 'As the book has it.'}${by}`,
      };
    case 'missing': {
      const left = kind === 'container' ? `${amount(quantity, unit, prefer)} by the book` : 'On hand by the book';
      return { word: 'stop', says: 'not seen', why: `${left}, in ${place ?? 'no place'}.${promised}` };
    }
    case 'different':
      return {
        word: 'care',
        says: sayDelta(delta, unit, prefer),
        why: `${counted} in it; the book has ${amount(quantity, unit, prefer)}.${by}`,
      };
    case 'extra':
      return {
        word: 'care',
        says: place ? `stands in ${place}` : 'in no place',
        why: `By the book it stands ${place ? `in ${place}` : 'nowhere'}.${delta === 0 ? '' : ` ${counted} in it: ${sayDelta(delta, unit, prefer)} than the book has.`}${by}`,
      };
    case 'back':
      return {
        word: 'care',
        says: 'gone by the book',
        why:
          kind === 'piece'
            ? `The book says it was used, cut or thrown away. Reverse that entry on its page to have it back.${by}`
            : counted
              ? `${counted} in it; the book has written it off.${by}`
              : `The book has written it off. Weigh what is in it to have it back.${by}`,
      };
    case 'changed':
      return {
        word: 'care',
        says: 'changed since',
        why: seen
          ? `${changedBy} wrote something of it after it was seen. Scan it again to judge it by what is there now.`
          : `${changedBy} moved or used it after this walk began. Scan it if it is here.`,
      };
  }
}

/** What each choice will do to a thing, in words for its chip. */
export function sayChoice(choice: WalkChoice, { status, delta, unit }: WalkThing, prefer: UnitSystem): string {
  switch (choice) {
    case 'gone':
      return 'Write it off';
    case 'move':
      return delta === 0 ? 'Move it here' : `Move it here, ${sayDelta(delta, unit, prefer)}`;
    case 'correct':
      return status === 'back' ? 'Put it back, here' : `Write ${sayDelta(delta, unit, prefer)}`;
    case 'leave':
      return 'Leave it';
  }
}

/** How far a walk has come: `12 of 31 seen, 2 to look into`. */
export function sayProgress(things: readonly WalkThing[]): string {
  const expected = things.filter(({ status }) => ['here', 'different', 'missing'].includes(status));
  const seen = expected.filter(({ status }) => status !== 'missing').length;
  const odd = things.filter(({ status }) => !['here', 'missing'].includes(status)).length;
  return `${seen} of ${expected.length} seen${odd > 0 ? `, ${odd} to look into` : ''}`;
}
