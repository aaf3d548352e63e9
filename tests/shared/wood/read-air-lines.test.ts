import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { readAirLines } from '@/shared/wood/read-air-lines';
import { sayWrongLine } from '@/shared/wood/say-wrong-line';

const TODAY = '2026-11-25' as CalendarDate;
const read = (text: string, more: Partial<Parameters<typeof readAirLines>[1]> = {}) =>
  readAirLines(text, { today: TODAY, order: 'day-first', prefer: 'metric', ...more });
const right = (on: string, tenthsC: number, humidityTenths: number) => ({ on, tenthsC, humidityTenths });

describe('the lines of a logger', () => {
  it.each([
    ['commas', '2026-11-01,20.5,48'],
    ['a time after the day', '2026-11-01 08:00:10,20.5,48'],
    ['a time as ISO 8601 writes it', '2026-11-01T08:00:00Z,20.5,48'],
    ['semicolons and decimal commas', '01/11/2026;20,5;48,0'],
    ['tabs', '1 Nov 2026\t20.5\t48 %'],
    ['quotes', '"2026-11-01","20.5","48"'],
    ['more decimals than the book keeps', '2026-11-01,20.47,47.96'],
    ['a heading in another order', 'RH %,Date,Temp °C\n48,2026-11-01,20.5'],
    ['a heading in °F', 'Date,Temperature (°F),Humidity\n2026-11-01,68.9,48'],
  ])('read with %s', (_, text) => {
    expect(read(text)).toMatchObject({ lines: [right('2026-11-01', 205, 480)], wrong: [] });
  });

  it('keep the heading they were read by, so that a line put right later is read the same way', () => {
    const heading = 'Date,RH %,Temp °C';
    const { heading: kept, wrong } = read(`${heading}\n2026-11-32,47,20`);
    expect(kept).toBe(heading);
    const again = [kept, ...wrong.map(({ text }) => text.replace('32', '02'))].join('\n');
    expect(read(again).lines).toEqual([right('2026-11-02', 200, 470)]);
    expect(read('2026-11-01,20,48')).not.toHaveProperty('heading');
  });

  it('count bare degrees as the book does', () => {
    expect(read('2026-11-01,68,48', { prefer: 'imperial' }).lines).toEqual([right('2026-11-01', 200, 480)]);
  });

  it('that do not read are named with their number, and the others are kept', () => {
    const { lines, wrong } = read(
      [
        '2026-11-01,20,48',
        '',
        'hello,20,48',
        '2026-11-26,20,48',
        '2026-11-02,warm,48',
        '2026-11-02,20,100',
        '2026-11-02,20',
        '2026-11-02,81,40',
        '2026-11-03,21,50',
      ].join('\r\n'),
    );
    expect(lines).toEqual([right('2026-11-01', 200, 480), right('2026-11-03', 210, 500)]);
    expect(wrong.map(({ nr, why }) => [nr, why])).toEqual([
      [3, 'date'],
      [4, 'ahead'],
      [5, 'temperature'],
      [6, 'humidity'],
      [7, 'too-few'],
      [8, 'temperature'],
    ]);
    expect(wrong[0]?.text).toBe('hello,20,48');
    expect(wrong.map(sayWrongLine)[0]).toBe('Line 3: its day does not read.');
  });

  it('of nothing are nothing', () => {
    expect(read(' \n\n')).toEqual({ lines: [], wrong: [] });
  });
});
