import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runScript } from '@/tests/support/run-script';

describe('the check of the arrows', () => {
  let folder = '';
  beforeEach(() => {
    folder = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-arrows-'));
    for (const room of ['shared/units', 'app/_server/stock', 'prisma'])
      fs.mkdirSync(path.join(folder, room), { recursive: true });
  });
  afterEach(() => fs.rmSync(folder, { recursive: true, force: true }));

  async function check(file: string, source: string) {
    const at = path.join(folder, file);
    fs.mkdirSync(path.dirname(at), { recursive: true });
    fs.writeFileSync(at, source);
    return runScript('scripts/check-arrows.ts', [folder]);
  }

  it.each([
    ['app/(shop)/jobs/page.tsx', "import { openBook } from '../../../prisma/open-book';\n", '@/prisma/open-book'],
    ['app/_server/stock/move.ts', "import { Key } from '../../_ui/keys';\n", '@/app/_ui/keys'],
    [
      'app/(shop)/jobs/form.tsx',
      "'use client';\nimport { move } from '../../_server/stock/move';\n",
      '@/app/_server/stock/move',
    ],
    ['shared/units/mass.ts', "import { judge } from '../wood/judge';\n", '@/shared/wood/judge'],
    ['shared/units/mass.ts', "import { judge } from '@/shared/wood/judge';\n", '@/shared/wood/judge'],
  ])('refuses %s an import against them, however it is written', async (file, source, named) => {
    const { code, err } = await check(file, source);
    expect(code).toBe(1);
    expect(err).toContain(`${file}: `);
    expect(err).toContain(named);
  });

  it('lets an import along them stand, relative or not', async () => {
    const fine = "import { ratio } from './ratio';\nimport { ok } from '../result/result';\n";
    expect(await check('shared/units/mass.ts', fine)).toMatchObject({ code: 0, err: '' });
    const types = "'use client';\nimport type { Moved } from '../../_server/stock/move';\n";
    expect((await check('app/(shop)/jobs/form.tsx', types)).code).toBe(0);
  });
});
