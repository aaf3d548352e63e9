import { describe, expect, it } from 'vitest';
import { speciesMeant } from '@/shared/wood/species-meant';

const ids = (name: string) => {
  const { exact, near } = speciesMeant(name);
  return { exact: exact.map(({ id }) => id), near: near.map(({ id }) => id) };
};

describe('the species a name in the book can mean', () => {
  it('is the one that bears the name, whatever its capitals, accents and hyphens', () => {
    expect(ids(' wych-Elm').exact).toEqual(['wych-elm']);
    expect(ids('American walnut').exact).toEqual(['black-walnut']);
    expect(ids('Juglans nigra').exact).toEqual(['black-walnut']);
  });
  it('is one of several where several bear the name, and none is assumed', () => {
    expect(ids('Ash').exact.sort()).toEqual(['european-ash', 'white-ash']);
    expect(ids('Walnut').exact.sort()).toEqual(['black-walnut', 'european-walnut']);
  });
  it('offers near names beside the exact ones, never one of them twice', () => {
    const { exact, near } = ids('Walnut');
    expect(near).toContain('butternut');
    expect(near.filter((id) => exact.includes(id))).toEqual([]);
  });
  it('looks at parts of a longer name, and only offers what they find', () => {
    expect(ids('Pippy oak')).toMatchObject({ exact: [] });
    expect(ids('Pippy oak').near).toContain('european-oak');
    expect(ids('Steamed black walnut').near[0]).toBe('black-walnut');
    expect(ids('Black walnut (steamed)').near[0]).toBe('black-walnut');
  });
  it('finds nothing for nothing and for what is no wood it knows', () => {
    expect(ids('')).toEqual({ exact: [], near: [] });
    expect(ids('Zzz qqq')).toEqual({ exact: [], near: [] });
  });
});
