import { describe, expect, it } from 'vitest';
import { airAsTyped, airBySeasons } from '@/app/(shop)/pieces/home-air';

const season = (id: number, name: string, fromMonth: number, tenthsC: number, humidityTenths: number) => ({
  id,
  name,
  fromMonth,
  tenthsC,
  humidityTenths,
});

describe('the air where a top will live', () => {
  it('is that of the driest and the dampest season of the room', () => {
    const seasons = [
      season(1, 'Winter', 11, 200, 300),
      season(2, 'Spring', 4, 180, 500),
      season(3, 'Summer', 7, 240, 650),
    ];
    const air = airBySeasons({ seasons });
    // Wood Handbook, Equation 4-5: about 6 % at 20 °C and 30 %, about 12 % at 24 °C and 65 %.
    expect(air?.dry.value.mc).toBeCloseTo(6.2, 0);
    expect(air?.damp.value.mc).toBeCloseTo(11.9, 0);
    expect(air?.says).toBe('Winter at 30 % and Summer at 65 %');
  });
  it('is not made up from one season or none', () => {
    expect(airBySeasons(undefined)).toBeUndefined();
    expect(airBySeasons({ seasons: [season(1, 'Winter', 11, 200, 300)] })).toBeUndefined();
  });
  it('is as typed where another room is meant, once all of it reads', () => {
    expect(airAsTyped({ dry: '30', damp: '60', temperature: '20' }, 'metric')?.says).toBe('30 and 60 % humidity');
    expect(airAsTyped({ dry: '30', damp: 'damp', temperature: '20' }, 'metric')).toBeUndefined();
  });
});
