import { describe, expect, it } from 'vitest';
import { speciesRows, speciesSources } from '@/app/(shop)/species/species-rows';
import { plainName } from '@/shared/wood/plain-name';

describe('the species page', () => {
  const rows = speciesRows('day-first');
  const sources = speciesSources(rows);

  it('has at least forty woods, each with its botanical name', () => {
    expect(rows.length).toBeGreaterThanOrEqual(40);
    for (const { botanical } of rows) expect(botanical).toMatch(/^[A-Z][a-z]+ /);
  });

  it('gives every figure that is known its source in words, and says the others are unknown', () => {
    let known = 0;
    for (const { figures } of rows) {
      expect(figures).toHaveLength(7);
      for (const { value, source } of figures) {
        expect(value === null).toBe(source === null);
        if (source === null) continue;
        known += 1;
        expect(sources[source]).toMatch(/\w.*[.]$/);
      }
    }
    expect(known).toBeGreaterThan(200);
  });

  // Wood Handbook, Forest Products Laboratory FPL-GTR-190 (2010), Table 4-3: black walnut 5.5, 7.8 and 12.8 %.
  it('shows black walnut as the handbook has it', () => {
    const walnut = rows.find((row) => row.id === 'black-walnut');
    expect(walnut?.botanical).toBe('Juglans nigra');
    expect(walnut?.figures.slice(2, 5).map((figure) => figure.value)).toEqual(['5.5 %', '7.8 %', '12.8 %']);
  });

  it('says what CITES lists, with the day of the list, and defers to the authority', () => {
    const listed = rows.filter((row) => row.cites !== null);
    expect(listed.length).toBeGreaterThan(3);
    for (const { cites } of listed) expect(cites).toMatch(/Appendix I.* As of .*\d{4}.*Ask your CITES authority/);
  });

  it('is searched by common, botanical and other names', () => {
    const found = (word: string) => rows.filter((row) => row.searched.includes(` ${plainName(word)}`));
    expect(found('Juglans').length).toBeGreaterThan(0);
    expect(found('english oak').map((row) => row.name)).toContain('European oak');
  });
});
