import Link from 'next/link';
import type { BookHead } from '@/app/_server/book/read-book';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { Fact } from '@/app/_ui/facts';
import { sayDate } from '@/shared/calendar/say-date';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printMoney } from '@/shared/units/print-money';
import type { PieceFlag } from '@/shared/wood/piece';

const FLAG_WORDS: Record<PieceFlag, string> = {
  broken: 'broken',
  strapped: 'strapped',
  checked: 'checked',
  twisted: 'twisted',
  'live-edge-left': 'live edge on the left',
  'live-edge-right': 'live edge on the right',
};

/** What the book knows of a piece of wood, as terms and values. */
export function pieceFacts(line: PieceLine, { today, units: prefer }: BookHead): Fact[] {
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const straight = line.widthStartNm === line.widthMiddleNm && line.widthMiddleNm === line.widthEndNm;
  const promised = line.facts.promisedTo;
  return [
    { term: 'Length', value: say(line.lengthNm) },
    {
      term: 'Width',
      value: straight
        ? say(line.widthMiddleNm)
        : `${say(line.widthStartNm)} at the start, ${say(line.widthMiddleNm)} in the middle, ${say(line.widthEndNm)} at the end`,
    },
    { term: 'Thickness', value: say(line.thicknessNm) },
    ...(line.facts.flags.length
      ? [{ term: 'Seen on it', value: line.facts.flags.map((flag) => FLAG_WORDS[flag]).join(', ') }]
      : []),
    ...(line.flitch
      ? [
          {
            term: 'Flitch',
            value: `${line.flitch}${line.flitchNumber === null ? '' : `, number ${line.flitchNumber} as sawn`}`,
          },
        ]
      : []),
    {
      term: 'Place',
      value: line.placeLabel ? <Link href={`/places/${line.placeLabel}`}>{line.place}</Link> : 'No place yet',
    },
    {
      term: 'Job',
      value: promised ? <Link href={`/jobs/${promised.id}`}>{promised.name}</Link> : 'Promised to nobody',
    },
    { term: 'Received', value: sayDate(line.receivedOn, { today }) },
    ...(line.cost ? [{ term: 'Cost', value: printMoney(line.cost.minor, line.cost.currency) }] : []),
    ...(line.note ? [{ term: 'Note', value: line.note }] : []),
  ];
}
