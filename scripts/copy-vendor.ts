import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ZXING_WASM_SHA256, ZXING_WASM_VERSION } from 'zxing-wasm/reader';

/**
 * Copies the decoder's WebAssembly file beside the pages that serve it, so that nothing is fetched from elsewhere.
 * The name carries the version its glue code expects, the content is checked against the hash that glue states, and other
 * versions are removed. Running it again changes nothing.
 */
const project = join(dirname(fileURLToPath(import.meta.url)), '..');
const vendor = join(project, 'public', 'vendor');
const name = `zxing_reader-${ZXING_WASM_VERSION}.wasm`;
const source = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');

const bytes = readFileSync(source);
if (sha256(bytes) !== ZXING_WASM_SHA256) {
  throw new Error(`${source} is not the file zxing-wasm ${ZXING_WASM_VERSION} expects. Install the packages again.`);
}

mkdirSync(vendor, { recursive: true });
for (const file of readdirSync(vendor)) {
  if (/^zxing_reader-.*\.wasm$/.test(file) && file !== name) rmSync(join(vendor, file));
}
const target = join(vendor, name);
if (!existsSync(target) || sha256(readFileSync(target)) !== ZXING_WASM_SHA256) writeFileSync(target, bytes);

function sha256(content: Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}
