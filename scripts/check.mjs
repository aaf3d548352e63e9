// `npm run check`: format and lint, types, the arrows between the rooms, dead code.
import { generate, install, run, step } from './steps.mjs';

const bin = (name) => `node_modules/.bin/${name}`;
export async function check() {
  await step('format and lint', () => run(bin('biome'), ['check', '--error-on-warnings']).then(() => ''));
  await step('types', () => run(bin('tsc'), ['--noEmit']).then(() => ''));
  await step('arrows between the rooms', () => run(bin('tsx'), ['scripts/check-arrows.ts']).then(() => ''));
  await step('dead code', () => run(bin('knip'), ['--no-progress']).then(() => ''));
}

if (process.argv[1]?.endsWith('check.mjs')) {
  try {
    await install();
    await generate();
    await check();
  } catch (error) {
    console.error(error.message);
    process.exit(1);
  }
}
