import { readRequest } from '@/shared/fit/fit-request';
import { fitSlabs } from '@/shared/fit/fit-slabs';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { nanometres } from '@/shared/units/nanometres';

let seed = 1;
const rnd = () => {
  seed = (seed * 1664525 + 1013904223) >>> 0;
  return seed / 4294967296;
};
const slab = (id: number, n: number, len: number, wid: number, wav: number) => {
  const st = [];
  for (let i = 0; i < n; i++) {
    const l = wid / 2 + (rnd() - 0.5) * wav;
    const r = wid / 2 + (rnd() - 0.5) * wav;
    st.push({
      at: nanometres(Math.round((len * 1e6 * i) / (n - 1))),
      left: nanometres(Math.round(l * 1e6)),
      right: nanometres(Math.round(r * 1e6)),
    });
  }
  const o = outlineFromStations({ stations: st });
  if (!o.ok) throw new Error(JSON.stringify(o.error));
  return { id: String(id), outline: o.value, defects: [], endChecks: [] };
};
const slabs = Array.from({ length: 200 }, (_, i) => slab(i, 20, 1800 + rnd() * 1500, 700 + rnd() * 600, 120));
const mm = (n: number) => nanometres(n * 1e6);
for (const shape of [
  { kind: 'rectangle' as const, length: mm(2134), width: mm(1016), cornerRadius: mm(250) },
  { kind: 'oval' as const, length: mm(2134), width: mm(1016) },
  { kind: 'round' as const, diameter: mm(900) },
  { kind: 'superellipse' as const, length: mm(2134), width: mm(1016), exponent: 2.5 },
]) {
  for (const w of [0, 5, 10]) {
    const req = readRequest({
      shape,
      grainWindow: w,
      edgeAllowance: mm(10),
      trims: { start: mm(0), end: mm(50) },
      filling: true,
    });
    if (!req.ok) throw new Error('x');
    const c = { yes: 0, nearly: 0, no: 0 };
    const ts = { yes: 0, nearly: 0, no: 0 };
    let worst = 0;
    const t = performance.now();
    let last = t;
    for (const a of fitSlabs(slabs, req.value)) {
      c[a.fit.answer]++;
      const n = performance.now();
      ts[a.fit.answer] += n - last;
      worst = Math.max(worst, n - last);
      last = n;
    }
    console.log(shape.kind, w, c, 'ms', (performance.now() - t).toFixed(0), ts, worst.toFixed(0));
  }
}
