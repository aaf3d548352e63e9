import { describe, expect, it } from 'vitest';
import { roomChart, signsApart } from '@/app/(shop)/places/room-chart';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

const day = (text: string) => text as CalendarDate;
const TODAY = day('2026-11-25');
const air = (text: string, tenthsC: number, humidityTenths: number) => ({ on: day(text), tenthsC, humidityTenths });
const reading = (text: string, rawTenths: number) => ({ on: day(text), rawTenths, meter: 'pin' as const });
const slab = (label: string, ...readings: ReturnType<typeof reading>[]) => ({
  label,
  title: `Slab ${label}`,
  readings,
});
const chart = (more: Partial<Parameters<typeof roomChart>[0]>) =>
  roomChart({ days: [], seasons: [], wood: [], ...more }, TODAY);

describe('the chart of a room', () => {
  it('is none where neither air nor wood is known', () => {
    expect(chart({})).toBeUndefined();
    expect(chart({ wood: [slab('S1')] })).toBeUndefined();
  });

  it('settles wood as the handbook prints it: 70 °F at 50 % is 9.2 % (FPL-GTR-190, 2010, Table 4-2)', () => {
    const drawn = chart({ days: [air('2026-11-20', 211, 500)] });
    expect(drawn?.runs[0]?.[0]?.emc).toBeCloseTo(9.2, 1);
  });

  it('breaks the line where more than a week was not noted', () => {
    const days = [air('2026-11-01', 200, 400), air('2026-11-08', 210, 400), air('2026-11-20', 205, 400)];
    expect(chart({ days })?.runs.map((run) => run.map(({ on }) => on))).toEqual([
      ['2026-11-01', '2026-11-08'],
      ['2026-11-20'],
    ]);
  });

  it('letters the pieces that were read, each with the wettest of a day', () => {
    const wood = [
      slab('S1', reading('2026-11-02', 140), reading('2026-11-02', 152)),
      slab('S2'),
      slab('S3', reading('2026-11-09', 90)),
    ];
    const drawn = chart({ wood });
    expect(drawn?.wood.map(({ sign, label, points }) => [sign, label, points])).toEqual([
      ['A', 'S1', [{ on: '2026-11-02', mcTenths: 152 }]],
      ['B', 'S3', [{ on: '2026-11-09', mcTenths: 90 }]],
    ]);
    expect(drawn?.rows.map(({ on, settles }) => [on, settles])).toEqual([
      ['2026-11-09', undefined],
      ['2026-11-02', undefined],
    ]);
  });

  it('puts the letters of one day that would lie on each other in one place', () => {
    const wood = [slab('S1', reading('2026-11-02', 150)), slab('S2', reading('2026-11-02', 152))];
    const others = [slab('S3', reading('2026-11-02', 120)), slab('S4', reading('2026-11-03', 151))];
    expect(signsApart(chart({ wood: [...wood, ...others] })?.wood ?? [], 10)).toEqual([
      { on: '2026-11-02', mcTenths: 151, signs: ['A', 'B'] },
      { on: '2026-11-02', mcTenths: 120, signs: ['C'] },
      { on: '2026-11-03', mcTenths: 151, signs: ['D'] },
    ]);
  });

  it('goes on with letters after Z', () => {
    const wood = Array.from({ length: 28 }, (_, at) => slab(`S${at}`, reading('2026-11-02', 100)));
    expect(
      chart({ wood })
        ?.wood.slice(25)
        .map(({ sign }) => sign),
    ).toEqual(['Z', 'A2', 'B2']);
  });

  it('draws the seasons where there is no log, and says them for the day of a reading', () => {
    const seasons = [
      { name: 'Heating', fromMonth: 10, tenthsC: 200, humidityTenths: 350 },
      { name: 'Summer', fromMonth: 5, tenthsC: 240, humidityTenths: 650 },
    ];
    const drawn = chart({ seasons, wood: [slab('S1', reading('2026-08-15', 120))] });
    expect(drawn?.runs.flat().map(({ on, air: each }) => [on, each.humidityTenths])).toEqual([
      ['2026-08-15', 650],
      ['2026-09-30', 650],
      ['2026-10-01', 350],
      ['2026-11-25', 350],
    ]);
    expect(drawn?.rows.at(-1)).toMatchObject({ on: '2026-08-15', settles: { air: { humidityTenths: 650 } } });
  });

  it('shows a year, and nothing to come', () => {
    const days = [air('2025-11-24', 200, 400), air('2025-11-25', 200, 400), air('2026-11-26', 200, 400)];
    expect(
      chart({ days })
        ?.runs.flat()
        .map(({ on }) => on),
    ).toEqual(['2025-11-25']);
  });
});
