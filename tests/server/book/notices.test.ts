import { describe, expect, it } from 'vitest';
import { FONTS, LIBRARIES } from '@/app/(shop)/settings/notices';
import program from '@/package.json';

describe('the notices of others’ work', () => {
  it('name every library and typeface the program is delivered with', () => {
    const named = new Set(LIBRARIES.flatMap(({ packages }) => packages));
    const fonts = FONTS.map(({ name }) => name.toLowerCase().replaceAll(' ', '-'));
    const missing = Object.keys(program.dependencies).filter(
      (name) => !named.has(name) && !fonts.some((font) => name.endsWith(font)),
    );
    expect(missing).toEqual([]);
  });
});
