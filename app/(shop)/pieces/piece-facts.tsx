import Link from 'next/link';
import type { BookHead } from '@/app/_server/book/read-book';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { Fact } from '@/app/_ui/facts';
import { sayCites } from '@/app/(shop)/pieces/say-cites';
import { sayDate } from '@/shared/calendar/say-date';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printMoney } from '@/shared/units/print-money';
import { citesNote } from '@/shared/wood/cites-note';
import { PIECE_FLAG_WORDS } from '@/shared/wood/piece-flag-words';
import type { SpeciesMeant } from '@/shared/wood/species-meant';

/** What the book knows of a piece of wood, as terms and values. */
export function pieceFacts(line: PieceLine, meant: SpeciesMeant, { today, units: prefer }: BookHead): Fact[] {
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const straight = line.widthStartNm === line.widthMiddleNm && line.widthMiddleNm === line.widthEndNm;
  const promised = line.facts.promisedTo;
  return [
    ...(line.form === 'sheet' ? [] : botanicalFacts(meant)),
    { term: 'Length', value: say(line.lengthNm) },
    {
      term: 'Width',
      value: straight
        ? say(line.widthMiddleNm)
        : `${say(line.widthStartNm)} at the start, ${say(line.widthMiddleNm)} in the middle, ${say(line.widthEndNm)} at the end`,
    },
    { term: 'Thickness', value: say(line.thicknessNm) },
    ...(line.facts.flags.length
      ? [{ term: 'Seen on it', value: line.facts.flags.map((flag) => PIECE_FLAG_WORDS[flag]).join(', ') }]
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

/** The botanical names its word can mean, and what the Convention lists of them; of near names only where there is no exact one. */
function botanicalFacts({ exact, near }: SpeciesMeant): Fact[] {
  const listed = (exact.length ? exact : near).flatMap(({ botanical }) => citesNote(botanical) ?? []);
  const notes = [...new Set(listed.map(sayCites))];
  return [
    ...(exact.length
      ? [{ term: 'Botanical name', value: <i>{exact.map((each) => each.botanical).join(' or ')}</i> }]
      : []),
    ...notes.map((note, index) => ({ term: notes.length > 1 ? `CITES ${index + 1}` : 'CITES', value: note })),
  ];
}
