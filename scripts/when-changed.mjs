// Plain JavaScript on Node alone: it runs before anything is installed.
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';

/**
 * Runs `work` when the digest of `inputs` is not the one it last succeeded with, or `output` is missing; answers whether
 * it did. The stamp goes first and comes back with the digest from before the work: what was broken off, or changed
 * under it, is done again.
 */
export async function whenChanged({ root, stamps }, name, inputs, output, work) {
  const stamp = path.join(stamps, name);
  const digest = digestOf(root, inputs);
  const last = fs.existsSync(stamp) ? fs.readFileSync(stamp, 'utf8') : '';
  if (last === digest && fs.existsSync(path.join(root, output))) return false;
  fs.rmSync(stamp, { force: true });
  await work();
  fs.mkdirSync(stamps, { recursive: true });
  fs.writeFileSync(stamp, digest);
  return true;
}

/** A digest of files and folders, so that nothing is done again that did not change. */
function digestOf(root, paths) {
  const hash = createHash('sha256').update(process.version);
  const visit = (file) => {
    const stat = fs.statSync(file, { throwIfNoEntry: false });
    if (!stat) return;
    if (stat.isDirectory()) {
      for (const name of fs.readdirSync(file).sort()) {
        if (name !== 'node_modules' && name !== 'generated') visit(path.join(file, name));
      }
    } else hash.update(path.relative(root, file)).update(contentOf(file));
  };
  for (const each of paths) visit(path.join(root, each));
  return hash.digest('hex');
}

/** What counts of a file. A build writes the folders it generates into the compiler's settings: those are not an input of it. */
function contentOf(file) {
  const content = fs.readFileSync(file);
  if (path.basename(file) === 'next-env.d.ts') return '';
  if (path.basename(file) !== 'tsconfig.json') return content;
  const { include: _, ...settings } = JSON.parse(content.toString());
  return JSON.stringify(settings);
}
