import { describe, expect, it } from 'vitest';
import { leavesHotRags, RAG_CAUTION } from '@/shared/hazards/self-heating';
import { MATERIAL_KIND_IDS } from '@/shared/shelf-life/material-kinds';

// 29 CFR 1910.106, flammable liquids, (e)(9)(iii) and (h)(8)(iii), as OSHA quotes them; International Fire Code 3304.2, as
// adopted in WAC 51-54A. Both from secondary quotes.
const TODO = RAG_CAUTION.todo.toLowerCase();

describe('29 CFR 1910.106(e)(9)(iii): combustible waste in covered metal containers, disposed of daily', () => {
  it('is what the caution asks for: metal, closed, emptied every day', () => {
    expect(TODO).toContain('metal can');
    expect(TODO).toContain('lid closed');
    expect(TODO).toContain('empty it every day');
  });
});

describe('International Fire Code 3304.2: a listed container for what ignites by itself', () => {
  it('is named as listed, and as for oily waste', () => {
    expect(TODO).toContain('listed');
    expect(TODO).toContain('oily waste');
  });
});

describe('common practice: rags wet with an oil that dries', () => {
  it('are laid flat, one by one, outdoors, never in a heap', () => {
    expect(TODO).toContain('flat and by itself, outdoors');
    expect(RAG_CAUTION.danger).toContain('in a heap');
  });

  it('are those of oils and of varnish; what dries by losing solvent or water leaves none', () => {
    expect(MATERIAL_KIND_IDS.filter(leavesHotRags)).toEqual(['hardwax-oil', 'two-part-oil', 'oil-finish', 'varnish']);
  });

  it('defer to the data sheet and the local fire code', () => {
    expect(RAG_CAUTION.defers).toMatch(/safety data sheet.*local fire code/);
  });
});
