import Link from 'next/link';
import type { BookHead } from '@/app/_server/book/read-book';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { Fact } from '@/app/_ui/facts';
import { saySheets } from '@/app/(shop)/arrive/wood/say-sheets';
import { citesOfWord } from '@/app/(shop)/pieces/cites-of-word';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printMoney } from '@/shared/units/print-money';
import type { UnitSystem } from '@/shared/units/unit-system';
import { PIECE_FLAG_WORDS } from '@/shared/wood/piece-flag-words';
import { quarterThickness } from '@/shared/wood/quarter-thickness';
import { sayWidths } from '@/shared/wood/say-piece-size';
import type { SpeciesMeant } from '@/shared/wood/species-meant';

/** What the book knows of a piece of wood, as terms and values. */
export function pieceFacts(
  line: PieceLine,
  meant: SpeciesMeant,
  { today, units: prefer, dateOrder: order }: BookHead,
): Fact[] {
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const straight = line.widthStartNm === line.widthMiddleNm && line.widthMiddleNm === line.widthEndNm;
  const promised = line.facts.promisedTo;
  return [
    ...(line.form === 'sheet' ? [] : botanicalFacts(line.species, meant, order)),
    ...(line.origin ? [{ term: 'Origin', value: line.origin }] : []),
    { term: line.form === 'pack' ? 'Longest board' : 'Length', value: say(line.lengthNm) },
    {
      term: line.form === 'pack' ? 'Widths' : 'Width',
      value:
        line.form === 'pack'
          ? sayWidths(line, { prefer })
          : straight
            ? say(line.widthMiddleNm)
            : `${say(line.widthStartNm)} at the start, ${say(line.widthMiddleNm)} in the middle, ${say(line.widthEndNm)} at the end`,
    },
    { term: 'Thickness', value: say(line.thicknessNm) },
    ...(line.sapwoodNm === null ? [] : [{ term: 'Sapwood', value: `${say(line.sapwoodNm)} deep from the edge` }]),
    ...soldFacts(line, prefer),
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
    { term: 'Received', value: sayDate(line.receivedOn, { order, today }) },
    ...(line.cost ? [{ term: 'Cost', value: printMoney(line.cost.minor, line.cost.currency) }] : []),
    ...(line.note ? [{ term: 'Note', value: line.note }] : []),
  ];
}

const GRAIN_WORDS = { length: 'Along its length', width: 'Along its width', none: 'None' };

/** How it was sold: quarters and surfacing with the published thickness; of a sheet its area, grain and faces. */
function soldFacts(line: PieceLine, prefer: UnitSystem): Fact[] {
  const { quarters, surfacing, grain, faceA, faceB } = line;
  const size = quarters === null ? undefined : quarterThickness(quarters);
  const inch = (length: Nanometres) => printLength(length, { prefer: 'imperial' });
  const published = size ? `, published as ${inch(size.rough)} rough and ${inch(size.surfacedTwo)} surfaced` : '';
  const sold = [quarters === null ? '' : `${quarters}/4`, surfacing].filter(Boolean).join(' ');
  return [
    ...(sold ? [{ term: 'Sold as', value: `${sold}${published}` }] : []),
    ...(line.form === 'sheet' ? [{ term: 'Area', value: saySheets(line, 1, prefer).replace(/[.]$/, '') }] : []),
    ...(grain ? [{ term: 'Grain', value: GRAIN_WORDS[grain] }] : []),
    ...(faceA ? [{ term: 'Face A', value: faceA }] : []),
    ...(faceB ? [{ term: 'Face B', value: faceB }] : []),
  ];
}

/** The botanical names its word can mean, and what the Convention lists of them. */
function botanicalFacts(word: string, { exact }: SpeciesMeant, order: DateOrder): Fact[] {
  const notes = citesOfWord(word, order);
  return [
    ...(exact.length
      ? [
          {
            term: 'Botanical name',
            value: (
              <Link href={`/species?q=${encodeURIComponent(exact[0]?.name ?? '')}`}>
                <i>{exact.map((each) => each.botanical).join(' or ')}</i>
              </Link>
            ),
          },
        ]
      : []),
    ...notes.map((note, index) => ({ term: notes.length > 1 ? `CITES ${index + 1}` : 'CITES', value: note })),
  ];
}
