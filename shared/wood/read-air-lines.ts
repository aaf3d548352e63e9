import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { parseTemperature } from '@/shared/units/parse-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';
import { equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import { type AirDay, WARMEST_TENTHS } from '@/shared/wood/room-air';

export type WrongLine = {
  /** Counted from 1, as an editor counts. */
  readonly nr: number;
  readonly text: string;
  readonly why: 'too-few' | 'date' | 'ahead' | 'temperature' | 'humidity';
};

export type AirLines = {
  readonly lines: readonly AirDay[];
  readonly wrong: readonly WrongLine[];
  /** The first line, where it says which column is which: without it the others would be read another way. */
  readonly heading?: string;
};

type Context = { readonly today: CalendarDate; readonly order: DateOrder; readonly prefer: UnitSystem };
type Columns = {
  readonly date: number;
  readonly temperature: number;
  readonly humidity: number;
  readonly unit: string;
};

const USUAL: Columns = { date: 0, temperature: 1, humidity: 2, unit: '' };

/**
 * Reads the lines of a logger, or of a sheet: date, temperature, relative humidity, between tabs, semicolons or commas. A
 * first line of words says which column is which and whether it counts in °C or °F; without one they stand in that order.
 * A time after the date is passed over. A comma may be the decimal mark where it does not part the columns; decimals are
 * rounded to tenths. A line that does not read is named and the others are kept. Empty lines are nothing.
 * `2026-11-01 08:00;20,5;48` is 20.5 °C and 48.0 % on 1 November.
 */
export function readAirLines(text: string, context: Context): AirLines {
  const rows = text.split(/\r\n|\n|\r/).map((line, at) => ({ nr: at + 1, text: line.trim() }));
  const written = rows.filter((row) => row.text !== '');
  const by = /\t/.test(text) ? '\t' : /;/.test(text) ? ';' : ',';
  const [first] = written;
  const columns = first && columnsOf(cells(first.text, by));
  const lines: AirDay[] = [];
  const wrong: WrongLine[] = [];
  for (const row of columns ? written.slice(1) : written) {
    const read = readLine(cells(row.text, by), columns ?? USUAL, context);
    if (typeof read === 'string') wrong.push({ ...row, why: read });
    else lines.push(read);
  }
  return { lines, wrong, ...(columns && first ? { heading: first.text } : {}) };
}

const cells = (line: string, by: string) =>
  line.split(by).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/, '$1')
      .trim(),
  );

/** What a heading says of the columns; undefined where the line is no heading. */
function columnsOf(heading: readonly string[]): Columns | undefined {
  const at = (sign: RegExp) => heading.findIndex((cell) => sign.test(cell));
  const temperature = at(/temp|°|℃|℉/i);
  const humidity = at(/humid|\brh\b|r\.h|%/i);
  if (temperature < 0 || humidity < 0 || heading.some((cell) => /^[-+\d]/.test(cell))) return undefined;
  const unit = /°?\s*\bF\b|℉|fahrenheit|°F/i.test(heading[temperature] ?? '')
    ? '°F'
    : /°?\s*\bC\b|℃|celsius|°C/i.test(heading[temperature] ?? '')
      ? '°C'
      : '';
  return { date: Math.max(0, at(/date|day|time|when/i)), temperature, humidity, unit };
}

function readLine(row: readonly string[], columns: Columns, { today, order, prefer }: Context) {
  const [date, temperature, humidity] = [row[columns.date], row[columns.temperature], row[columns.humidity]];
  if (!date || !temperature || !humidity) return 'too-few' as const;
  const day = readTypedDate(date.replace(/[T\s]+\d{1,2}[:.]\d{2}.*$/, ''), { today, order, aim: 'past' });
  if (!day.ok || day.value.precision !== 'day') return 'date' as const;
  if (day.value.date > today) return 'ahead' as const;
  const bare = /^[-+]?\d+(?:[.,]\d+)?$/.test(temperature);
  const degrees = parseTemperature(`${toTenth(temperature)}${bare ? columns.unit : ''}`, { prefer });
  if (!degrees.ok || degrees.value > WARMEST_TENTHS) return 'temperature' as const;
  const percent = /^\d{1,3}(?:[.,]\d+)?\s*%?$/.test(humidity)
    ? Number(humidity.replace('%', '').replace(',', '.'))
    : NaN;
  const humidityTenths = Math.round(percent * 10);
  const emc = equilibriumMoisture({ scale: 'C', degrees: degrees.value / 10 }, humidityTenths / 10);
  if (!emc.ok) return emc.error.code === 'temperature-out-of-range' ? ('temperature' as const) : ('humidity' as const);
  return { on: day.value.date, tenthsC: degrees.value as number, humidityTenths };
}

/** A logger writes more decimals than the book keeps. */
function toTenth(temperature: string): string {
  return temperature.replace(/\d+[.,]\d{2,}/, (figure) => Number(figure.replace(',', '.')).toFixed(1));
}
