import Link from 'next/link';
import type { InspectionLine } from '@/app/_server/stock/container-page';
import { Code } from '@/app/_ui/code';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printQuantity } from '@/shared/units/print-quantity';
import { printTemperature } from '@/shared/units/print-temperature';
import { amountOf } from '@/shared/units/stock-unit';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';

/** Inspections and test pours, newest first. */
export function InspectionList({
  lines,
  today,
  order,
  prefer,
}: {
  lines: readonly InspectionLine[];
  today: CalendarDate;
  order: DateOrder;
  prefer: UnitSystem;
}) {
  if (lines.length === 0)
    return (
      <p className={styles.soft}>None yet. A passed one can carry it past its date where the material allows it.</p>
    );
  const say = (date: string) => sayDate(date as CalendarDate, { order, today });
  return (
    <ul className={styles.inspections}>
      {lines.map((line) => (
        <li key={line.id}>
          <b>
            {line.kind === 'test-pour' ? 'Test pour' : 'Inspection'} {line.passed ? 'passed' : 'failed'},{' '}
            {say(line.madeOn)}
            {line.validUntil ? `, holds until ${say(line.validUntil)}` : ''}
          </b>
          <span>{[line.method, sayTried(line, prefer), line.note].filter(Boolean).join('. ')}</span>
          <span className={styles.soft}>
            <SpeaksFor line={line} />
            {line.photo ? (
              <>
                . <a href={`/photos/${line.photo}`}>Photo</a>
              </>
            ) : null}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** What it speaks for: a pair of lots, one container, or the lot. */
function SpeaksFor({ line: { pairLot, container } }: { line: InspectionLine }) {
  const own = container ? <ContainerLink label={container} /> : pairLot ? 'the lot' : null;
  if (!pairLot) return own ? <>Speaks for {own}</> : 'Speaks for the lot';
  return (
    <>
      Speaks for {own} together with {pairLot.container ? <ContainerLink label={pairLot.container} /> : null}
      {pairLot.container ? ' of ' : null}
      <Link href={`/lots/${pairLot.lotId}`}>
        {pairLot.product}, {pairLot.code ? `lot ${pairLot.code}` : 'a lot without a code'}
      </Link>
    </>
  );
}

const ContainerLink = ({ label }: { label: string }) => (
  <Link href={`/containers/${label}`}>
    <Code>{printOwnLabel(label as OwnLabelCode)}</Code>
  </Link>
);

/** What was measured of it: "100 g, 21 °C, 45 min, hard and clear". */
function sayTried({ massMg, roomTenthsC, minutes, result }: InspectionLine, prefer: UnitSystem): string {
  return [
    massMg === null ? '' : printQuantity(amountOf('mg', massMg), 'mg', { prefer }),
    roomTenthsC === null ? '' : printTemperature(tenthsCelsius(roomTenthsC), { prefer }),
    minutes === null ? '' : `${minutes} min`,
    result,
  ]
    .filter(Boolean)
    .join(', ');
}
