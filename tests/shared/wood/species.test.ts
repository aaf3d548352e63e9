import { describe, expect, it } from 'vitest';
import { ALL_SPECIES, speciesById } from '@/shared/wood/all-species';
import { CITES_AS_OF, citesNote } from '@/shared/wood/cites-note';
import { findSpecies } from '@/shared/wood/find-species';
import { WOOD_SOURCES } from '@/shared/wood/sources';

const figuresOf = (id: string) => {
  const each = speciesById(id);
  if (!each) throw new Error(`No species ${id}`);
  return [
    each.gravityGreen,
    each.gravity12,
    each.shrinkRadial,
    each.shrinkTangential,
    each.shrinkVolume,
    each.moveRadial,
    each.moveTangential,
  ];
};

describe('the species list', () => {
  it('knows more than 100, each with its own id, name and botanical name', () => {
    expect(ALL_SPECIES.length).toBeGreaterThan(100);
    for (const key of ['id', 'name', 'botanical'] as const) {
      expect(new Set(ALL_SPECIES.map((each) => each[key])).size).toBe(ALL_SPECIES.length);
    }
    for (const { id, botanical } of ALL_SPECIES) {
      expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(botanical).toMatch(/^[A-Z][a-z]+ /);
    }
  });

  it('is in the order of names', () => {
    const names = ALL_SPECIES.map((each) => each.name);
    expect(names).toEqual([...names].sort());
  });

  it('gives every figure a source, and at least 40 species all of movement and density', () => {
    for (const { id } of ALL_SPECIES) {
      for (const figure of figuresOf(id)) if (figure) expect(WOOD_SOURCES).toHaveProperty(figure.source);
    }
    const whole = ALL_SPECIES.filter(
      (each) =>
        (each.gravityGreen || each.gravity12) &&
        each.shrinkRadial &&
        each.shrinkTangential &&
        each.shrinkVolume &&
        each.moveRadial &&
        each.moveTangential,
    );
    expect(whole.length).toBeGreaterThanOrEqual(40);
  });

  it('leaves unknown what is unknown', () => {
    expect(figuresOf('monkeypod')).toEqual(Array(7).fill(null));
    expect(figuresOf('claro-walnut')).toEqual(Array(7).fill(null));
    expect(figuresOf('honeylocust')[1]).toBeNull();
  });

  it('keeps one source for each figure of a row that rests on two', () => {
    expect(speciesById('teak')?.moveRadial?.source).toBe('table-13-5-memory');
    expect(speciesById('teak')?.moveTangential?.source).toBe('table-13-5-restated');
  });

  it('shrinks more along the rings than across them, and in volume about the sum of both', () => {
    for (const { shrinkRadial: r, shrinkTangential: t, shrinkVolume: v } of ALL_SPECIES) {
      if (!r || !t || !v) continue;
      expect(t.value).toBeGreaterThan(r.value);
      expect(Math.abs(v.value - r.value - t.value)).toBeLessThan(2.5);
    }
  });

  it('moves more along the rings than across them', () => {
    for (const { moveRadial: r, moveTangential: t } of ALL_SPECIES)
      if (r && t) expect(t.value).toBeGreaterThan(r.value);
  });

  it('is denser at 12 % than green by volume', () => {
    for (const { gravityGreen: g, gravity12: d } of ALL_SPECIES) if (g && d) expect(d.value).toBeGreaterThan(g.value);
  });
});

describe('searching species', () => {
  it.each([
    ['walnut', 'black-walnut'],
    ['Juglans nigra', 'black-walnut'],
    ['hard maple', 'sugar-maple'],
    ['TULIP pop', 'yellow-poplar'],
    ['yellow poplar', 'yellow-poplar'],
    ['suar', 'monkeypod'],
    ['wych', 'wych-elm'],
    ['querc rub', 'northern-red-oak'],
  ])('“%s” finds %s first', (text, id) => expect(findSpecies(text)[0]?.id).toBe(id));

  it('finds nothing for nothing, and nothing for a word no name begins with', () => {
    expect(findSpecies('  ')).toEqual([]);
    expect(findSpecies('zzz')).toEqual([]);
  });

  it('gives no more than asked', () => expect(findSpecies('a', 3)).toHaveLength(3));
});

// Appendices of the Convention, from memory.
describe('the note on trade in endangered species', () => {
  it.each([
    ['Dalbergia nigra', ['I']],
    ['Dalbergia latifolia', ['II']],
    ['Swietenia macrophylla', ['II']],
    ['Pericopsis elata', ['II']],
    ['Guibourtia spp.', ['II', 'II', 'II']],
    ['Quercus mongolica', ['III']],
  ])('%s is in %j', (botanical, appendices) => {
    expect(citesNote(botanical)?.listings.map(({ appendix }) => appendix)).toEqual(appendices);
  });

  it.each(['Juglans nigra', 'Quercus alba', 'Diospyr', ''])('nothing is known of “%s”', (botanical) => {
    expect(citesNote(botanical)).toBeNull();
  });

  it('states its date and defers to the authority', () => {
    expect(citesNote('Khaya spp.')).toMatchObject({ asOf: CITES_AS_OF, standing: 'memory' });
    expect(citesNote('Khaya spp.')?.defer).toMatch(/authority/);
  });

  it('says of persimmon that only trees of Madagascar are listed', () => {
    expect(citesNote('Diospyros virginiana')?.listings[0]?.limit).toMatch(/Madagascar/);
  });
});
