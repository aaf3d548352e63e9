import fs from 'node:fs';
import { randomUUID } from 'node:crypto';
import { setUpBook } from '@/app/_server/book/set-up-book';
import { addPlace } from '@/app/_server/places/add-place';
import { addJob } from '@/app/_server/jobs/add-job';
import { teachProduct } from '@/app/_server/products/teach-product';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { changeHold } from '@/app/_server/stock/change-hold';
import { openContainer } from '@/app/_server/stock/open-container';
import { discard } from '@/app/_server/stock/discard';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { prepareBook } from '@/prisma/prepare-book';
import { RESIN } from '@/tests/support/stock-of-a-test';
const big = process.argv[2] === 'big';
const files = bookFiles();
fs.rmSync(files.folder, { recursive: true, force: true });
await prepareBook(files);
const book = await openBook(files);
const now = new Date();
const by = () => ({ who: { who: 'Ada', device: 'iPhone' }, key: randomUUID(), now });
const must = (r: any) => { if (!r.ok) throw new Error(JSON.stringify(r.error)); return r.value.answer; };
must(await setUpBook(book, by(), { name: 'Seed shop', timeZone: 'America/New_York', units: 'metric', currency: 'USD' }));
const today = '2026-11-25' as any;
const room = must(await addPlace(book, by(), { name: 'Store room', kind: 'room' }));
const places: string[] = [];
for (let i = 1; i <= 6; i++) places.push(must(await addPlace(book, by(), { name: i === 3 ? 'The long shelf behind the big bandsaw, second from the floor' : `Cabinet ${i}`, kind: 'cabinet', parentLabel: room.label })).label);
must(await addJob(book, by(), { name: 'River desk', purpose: 'client', client: 'Ottoline Vane', dayOfUse: '2026-12-19' as any, note: '' }));
must(await addJob(book, by(), { name: 'Hall bench', purpose: 'own', client: '', dayOfUse: '2026-12-10' as any, note: '' }));
const kinds = ['resin-a', 'resin-b', 'varnish', 'pva', 'hardwax-oil', 'pigment'] as const;
const names = ['Deep-pour resin, part A', 'Deep-pour hardener, part B', 'Satin varnish', 'Wood glue', 'Hardwax oil', 'Pigment paste', 'Extraordinarily long product name for a casting system with ultraviolet stabiliser and slow hardener, low viscosity, part A'];
const products = big ? 40 : 7; const lots = big ? 5 : 3; const per = big ? 50 : 4;
let n = 0;
for (let p = 0; p < products; p++) {
  const unit = p % 7 === 2 ? 'uL' : p % 7 === 5 ? 'piece' : 'mg';
  const { productId } = must(await teachProduct(book, by(), { ...RESIN, name: names[p % 7]! + (p >= 7 ? ` ${p}` : ''), maker: p % 3 ? 'Tarn' : 'Hollin & Fell Coatings Works of the North', kind: kinds[p % 6]!, unit, packageSize: unit === 'piece' ? 6 : 2_500_000, tareMg: unit === 'piece' ? undefined : 180_000, policyKind: p % 7 === 5 ? 'keeps' : 'inspectable', statedLife: p % 7 === 5 ? undefined : RESIN.statedLife, openedLife: p % 7 === 5 ? undefined : RESIN.openedLife, system: p % 6 < 2 ? { name: 'Tarn deep pour', part: p % 6 === 0 ? 'A' : 'B' } : undefined, hazards: ['GHS05', 'GHS07'], safetySheet: 'https://example.com/sds.pdf', code: `04012345${String(100000 + p)}`, note: '' } as any));
  for (let l = 0; l < lots; l++) {
    const months = [-2, 1, 6, 14, 9][(p + l) % 5]!;
    const d = new Date(Date.UTC(2026, 10 + months, 12)).toISOString().slice(0, 10);
    const r = must(await receiveContainers(book, by(), { productId, lotCode: l === 2 && p % 2 ? 'LOT-WITH-A-VERY-LONG-CODE-2026-11-0000117-B' : `K26-${p}${l}4`, dates: (p + l) % 6 === 5 ? {} : { bestBefore: { date: d as any, precision: 'day', confirmed: (p + l) % 4 !== 1 } }, count: per, size: unit === 'piece' ? 6 : 2_500_000, left: unit === 'piece' ? 5 : 1_840_000, costMinor: 8950, receivedOn: today, placeLabel: (p + l) % 5 ? places[(p + l) % 6]! : undefined }));
    n += per;
    if (l === 0) {
      must(await openContainer(book, by(), { label: r.containers[0].label, opened: { on: '2026-10-01' as any, sureness: 'guessed' } }));
      must(await noteCondition(book, by(), { label: r.containers[1].label, conditions: ['crystals', 'haze'], why: '' }));
      must(await changeHold(book, by(), { stockId: r.containers[2].stockId, hold: 'on-hold', why: 'Waiting for word from the maker' }));
      must(await discard(book, by(), { label: r.containers[3].label, why: 'Spilt' }));
    }
  }
}
const mm = (x: number) => Math.round(x * 1e6);
const species = ['Walnut', 'White oak', 'Elm', 'Ash', 'Black locust'];
for (let i = 0; i < (big ? 60 : 14); i++) {
  const form = (['slab', 'board', 'slab', 'sheet', 'offcut'] as const)[i % 5]!;
  const len = form === 'offcut' ? 460 : 1800 + (i % 5) * 320;
  const w = form === 'slab' ? 620 + (i % 4) * 90 : form === 'sheet' ? 1220 : 210;
  must(await receivePieces(book, by(), { form, species: form === 'sheet' ? 'Birch ply' : species[i % 5]!, count: form === 'slab' ? 3 : 1 + (i % 3), lengthNm: mm(len), widthStartNm: mm(w * 1.1), widthMiddleNm: mm(w), widthEndNm: mm(w * 1.25), thicknessNm: mm(form === 'sheet' ? 18 : 54), flags: form === 'slab' ? [(['checked', 'strapped', 'broken', 'twisted'] as const)[i % 4]!, 'live-edge-left', 'live-edge-right'] : [], flitch: form === 'slab' ? `W${i}` : '', flitchNumber: form === 'slab' ? 1 : undefined, costMinor: 42000, receivedOn: today, placeLabel: places[i % 6], note: '', reading: i % 3 ? { mcTenths: 84 + i, meter: 'Pin', spot: 'middle' } : undefined }));
}
console.log(n, 'containers', await book.read.piece.count(), 'pieces');
await book.close();
process.exit(0);
