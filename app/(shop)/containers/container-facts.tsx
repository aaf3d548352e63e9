import Link from 'next/link';
import type { BookHead } from '@/app/_server/book/read-book';
import type { ContainerPage } from '@/app/_server/stock/container-page';
import { Code } from '@/app/_ui/code';
import type { Fact } from '@/app/_ui/facts';
import { CONDITION_WORDS } from '@/app/(shop)/_parts/condition-words';
import { sayLeftOf } from '@/app/(shop)/_parts/stock/say-left-of';
import { sayDate } from '@/shared/calendar/say-date';
import { isMaterialKind, MATERIAL_KINDS } from '@/shared/shelf-life/material-kinds';
import { printMoney } from '@/shared/units/print-money';
import { printQuantity } from '@/shared/units/print-quantity';

const HOLDS = { free: '', 'on-hold': 'On hold', quarantine: 'In quarantine', recalled: 'Recalled' } as const;

const sayHold = (hold: keyof typeof HOLDS, because: string): string =>
  because ? `${HOLDS[hold]}: ${because}` : HOLDS[hold];

/** What the book knows of a container, as terms and values. */
export function containerFacts(
  { line, cost, heldBecause }: ContainerPage,
  { today, units: prefer, dateOrder: order }: BookHead,
): Fact[] {
  const { container, lot } = line.candidate;
  const opened = container.opened;
  const amounts = sayLeftOf(line, prefer);
  const say = (date: typeof today) => sayDate(date, { order, today });
  return [
    {
      term: 'Left',
      value: `${line.left === 0 ? 'Nothing' : amounts.left} of ${amounts.size}`,
    },
    {
      term: 'Product',
      value: (
        <>
          <Link href={`/products/${line.productId}`}>{line.product}</Link>
          {[line.maker, isMaterialKind(line.kind) ? MATERIAL_KINDS[line.kind] : '']
            .filter(Boolean)
            .map((words) => `, ${words}`)}
        </>
      ),
    },
    {
      term: 'Lot',
      value: (
        <Link href={`/lots/${line.lotId}`}>{line.lotCode ? <Code>{line.lotCode}</Code> : 'No lot is printed'}</Link>
      ),
    },
    {
      term: 'Place',
      value: line.placeLabel ? <Link href={`/places/${line.placeLabel}`}>{line.place}</Link> : 'No place yet',
    },
    {
      term: 'Opened',
      value: opened ? `${say(opened.on)}${opened.sureness === 'guessed' ? ', a guess' : ''}` : 'Still sealed',
    },
    ...(container.hold === 'free' ? [] : [{ term: 'Hold', value: sayHold(container.hold, heldBecause.container) }]),
    ...(lot.hold === 'free'
      ? []
      : [{ term: 'Its lot', value: <Link href={`/lots/${line.lotId}`}>{sayHold(lot.hold, heldBecause.lot)}</Link> }]),
    ...(container.conditions.length
      ? [{ term: 'Seen in it', value: container.conditions.map((each) => CONDITION_WORDS[each]).join(', ') }]
      : []),
    { term: 'Received', value: say(line.receivedOn) },
    ...(line.tareMg === null ? [] : [{ term: 'Weighs empty', value: printQuantity(line.tareMg, 'mg', { prefer }) }]),
    ...(cost === null ? [] : [{ term: 'Cost', value: printMoney(cost.minor, cost.currency) }]),
  ];
}
