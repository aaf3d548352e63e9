import { describe, expect, it } from 'vitest';
import { sayZone, searchZones, zoneTitle } from '@/app/_ui/field/search-zones';

const ZONES = Intl.supportedValuesOf('timeZone').map((zone) => ({ zone, title: zoneTitle(zone) }));

describe('the search for a time zone', () => {
  it('finds a city by the beginnings of its words, whatever the case and accents', () => {
    expect(searchZones(ZONES, 'NEW y', 8)).toEqual(['America/New_York']);
    expect(searchZones(ZONES, 'são pau', 8)).toEqual(['America/Sao_Paulo']);
  });

  it('puts cities that begin with what was typed before the rest', () => {
    expect(searchZones(ZONES, 'lo', 3)[0]).toMatch(/\/Lo/);
    expect(searchZones(ZONES, 'america', 8)).toHaveLength(8);
  });

  it('finds a zone by what it is called', () => {
    expect(searchZones(ZONES, 'central european', 400)).toContain('Europe/Berlin');
  });

  it('finds nothing for nothing, or for what is no zone', () => {
    expect(searchZones(ZONES, '  ', 8)).toEqual([]);
    expect(searchZones(ZONES, '///', 8)).toEqual([]);
    expect(searchZones(ZONES, 'atlantis', 8)).toEqual([]);
  });

  it('says the city first', () => {
    expect(sayZone('America/Argentina/Buenos_Aires')).toBe('Buenos Aires, Argentina, America');
  });
});
