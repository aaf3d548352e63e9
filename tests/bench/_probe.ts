import Database from 'better-sqlite3';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { scanToPull } from '@/app/_server/pull/scan-to-pull';
import { onHand } from '@/app/_server/find/on-hand';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { loadContainer, loadSisters } from '@/app/_server/stock/load-container';
import { readBook } from '@/app/_server/book/read-book';
import { judge } from '@/shared/shelf-life/judge';
const files = bookFiles(process.argv[2]);
const book = await openBook(files);
const db = new Database(files.database);
const labels = (db.prepare(`SELECT label FROM Stock WHERE kind='container' AND quantity>0 ORDER BY abs(id*2654435761 % 1000003) LIMIT 300`).all() as {label:string}[]).map(r=>r.label);
const only = process.argv[3];
async function time(name: string, n: number, f: (i: number) => Promise<unknown>) {
  if (only && !name.includes(only)) return;
  for (let i=0;i<20;i++) await f(i);
  const t: number[] = [];
  for (let i=0;i<n;i++){ const a=performance.now(); await f(i); t.push(performance.now()-a);} 
  t.sort((a,b)=>a-b); console.log(name.padEnd(34), 'median', t[n>>1]!.toFixed(2), 'p95', t[Math.floor(n*.95)]!.toFixed(2));
}
const L = (i:number)=>labels[i%labels.length]!;
const now = new Date();
let words: Record<string, number> = {};
await time('raw label', 200, async i => db.prepare('SELECT id FROM Stock WHERE label=?').get(L(i)));
await time('readBook', 200, () => readBook(book, now));
await time('loadContainer', 200, i => loadContainer(book.read, L(i)));
const line = (await loadContainer(book.read, L(3)))!;
await time('loadSisters', 100, () => loadSisters(book.read, line));
await time('rawQuery 1', 200, i => book.read.$queryRaw`SELECT id FROM Stock WHERE label=${L(i)}`);
await time('scanToPull', 200, async i => { const r = await scanToPull(book, { scan: { text: L(i) }, purpose: 'client', dayOfUse: '2026-12-09' as never }, now); if (r.ok && r.value.kind==='container') words[r.value.verdict.word]=(words[r.value.verdict.word]??0)+1; return r; });
console.log(words);
for (const q of ['hardwax', 'tarn varn', 'bay 12', '26A', 'C4', 'table 1', '']) await time(`onHand "${q}"`, 12, () => onHand(book, { show: 'materials', query: q }));
await time('onHand wood walnut', 20, () => onHand(book, { show: 'wood', query: 'walnut' }));
let n = 0;
await time('weigh', 100, async i => { const l = await loadContainer(book.read, L(i)); n++; const r = await weighContainer(book, { who: { who: 'M', device: 'd' }, key: `probe-${process.pid}-${n}`, now }, { label: L(i), left: Number(l!.left) === 7 ? 8 : 7, why: '' }); if(!r.ok) throw new Error(JSON.stringify(r)); return r; });
process.exit(0);
