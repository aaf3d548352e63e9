import type { ReactElement, ReactNode } from 'react';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { cutPiece } from '@/app/_server/cuts/cut-piece';
import { whatFits } from '@/app/_server/fits/what-fits';
import { addJob } from '@/app/_server/jobs/add-job';
import { keepPour } from '@/app/_server/pours/keep-pour';
import { poursOfJob, readPour } from '@/app/_server/pours/read-pour';
import { voidChoices } from '@/app/_server/pours/void-choices';
import { changeMarks } from '@/app/_server/shapes/change-marks';
import { measureByStations } from '@/app/_server/shapes/measure-by-stations';
import { givePiece } from '@/app/_server/stock/give-piece';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { PlanForm, type PlanFormProps } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-form';
import { keepPourAction } from '@/app/(shop)/jobs/[id]/pours/actions';
import NewPourPage from '@/app/(shop)/jobs/[id]/pours/new/page';
import type { TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import PourForPage from '@/app/(shop)/jobs/pour-for/page';
import { fitsView } from '@/app/(shop)/on-hand/fits/fits-view';
import { pourHref } from '@/app/(shop)/on-hand/fits/pour-href';
import { readQuestion } from '@/app/(shop)/on-hand/fits/question';
import { giveAction } from '@/app/(shop)/pieces/actions';
import type { NewMark } from '@/shared/outline/piece-marks';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { FIGURES } from '@/tests/support/pour-figures';
import { readyToPour } from '@/tests/support/pour-of-a-test';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, NOW, refusedWith, storeOf, type TestBook, TODAY } from '@/tests/support/test-book';

vi.mock('next/cache', () => ({ revalidatePath: () => undefined }));
vi.mock('next/server', () => ({ connection: async () => undefined }));
vi.mock('next/navigation', () => ({
  notFound: () => {
    throw new Error('not found');
  },
  redirect: (to: string) => {
    throw new Error(`sent to ${to}`);
  },
  useRouter: () => undefined,
}));
vi.mock('next/headers', () => ({
  headers: async () => new Headers({ 'user-agent': 'Android' }),
  cookies: async () => ({ get: () => undefined }),
}));
// The threads of the search are the server's own; here it is searched where the test stands.
vi.mock('@/app/_server/fits/search-off-thread', async () => {
  const { searchHere } = await import('@/app/_server/fits/search-here');
  return { AT_ONCE: 1, searchOffThread: searchHere() };
});

const mm = (length: number) => nanometres(Math.round(length * 1e6));
const um = (length: number) => Math.round(length * 1000);
/** A top of 1500 × 600 mm, finished 40 mm, a river of 80 mm; nothing lost at edges or ends. Millimetres, said so. */
const QUESTION =
  'make=river&shape=rectangle&l=1500 mm&w=600 mm&r=&thick=40 mm&gap=80 mm&back=50 mm&edge=0&trim=0&grain=0&mc=&fill=yes';

let test: TestBook;
const data = process.env.FLITCHBOOK_DATA;
beforeAll(async () => {
  vi.useFakeTimers({ now: NOW, toFake: ['Date'] });
  test = await freshBook();
  process.env.FLITCHBOOK_DATA = test.files.folder;
  Object.assign(process.env, storeOf(test.files));
});
afterAll(async () => {
  vi.useRealTimers();
  delete process.env.FLITCHBOOK_DATABASE_URL;
  if (data === undefined) delete process.env.FLITCHBOOK_DATA;
  else process.env.FLITCHBOOK_DATA = data;
  await (globalThis as { flitchbookStore?: Promise<TestBook['book']> }).flitchbookStore?.then((book) => book.close());
  await test.remove();
});

/** Two slabs of their own species, 2000 mm long, 58 mm thick, straight, each so wide to either side of its line. */
let woods = 0;
async function twoSlabs(half = 150) {
  woods += 1;
  const species = `Elm ${woods}`;
  const received = must(
    await receivePieces(
      test.book,
      by(),
      aSlab({ species, count: 2, lengthNm: mm(2000), thicknessNm: mm(58), flitch: '', flags: [] }),
    ),
  );
  const labels = received.pieces.map(({ label }) => label);
  for (const label of labels) await measure(label, half);
  return { species, labels };
}
const measure = async (label: string, half: number) =>
  must(
    await measureByStations(test.book, by(), {
      label,
      chalkLine: { stations: [0, 2000].map((at) => ({ at: mm(at), left: mm(half), right: mm(half) })) },
      why: 'Measured',
    }),
  );

const cutInTwo = async (label: string) => {
  const line = await loadPiece(test.book.read, label);
  const points = [
    { x: um(1000), y: 0 },
    { x: um(1000), y: 1 },
  ];
  const half = { as: 'slab' as const, promised: true };
  must(
    await cutPiece(test.book, by(), {
      label,
      shapeId: line?.shape?.id ?? null,
      how: { by: 'lines', lines: [{ way: 'cross', points, kerf: um(3) }], bands: 'kept' },
      become: [half, half],
      why: 'For the banks',
    }),
  );
};

const TYPING = { prefer: 'imperial', today: TODAY, order: 'day-first' } as const;

/** What the fits page answers to a question, and where the first key of its first answer goes. */
async function searched(query: string, species: string, jobId?: number) {
  const params = Object.fromEntries(new URLSearchParams(`${query}&species=${species}`));
  const ask = unwrap(readQuestion(params, TYPING).read);
  const fits = unwrap(await whatFits(test.book, ask, { today: TODAY, currency: 'USD' }));
  const { drawn } = fitsView(fits, ask, { ...TYPING, moisture: false, best: 'balanced' });
  const row = drawn.find(({ pour, members }) => pour && (pour.of === 'fills' || members.length === 2));
  if (!row?.pour) throw new Error('Nothing to pour was answered.');
  return { row, href: pourHref(`${query}&species=${species}`, row.pour, jobId) };
}

/** Everything of one kind in what a page gives. */
function found<P>(node: ReactNode, type: unknown): P[] {
  if (Array.isArray(node)) return node.flatMap((each) => found<P>(each, type));
  if (typeof node !== 'object' || node === null || !('props' in node)) return [];
  const element = node as ReactElement<{ children?: ReactNode }>;
  return [...(element.type === type ? [element.props as P] : []), ...found<P>(element.props.children, type)];
}
const textOf = (node: ReactNode): string => {
  if (typeof node === 'string' || typeof node === 'number') return String(node);
  if (Array.isArray(node)) return node.map(textOf).join('');
  if (typeof node !== 'object' || node === null || !('props' in node)) return '';
  const props = node.props as Record<string, ReactNode>;
  return ['title', 'happened', 'toDo', 'children'].map((name) => textOf(props[name])).join(' ');
};

/** The planner as its page opens it. */
async function planner(href: string) {
  const [path = '', query = ''] = href.split('?');
  const id = /^\/jobs\/(\d+)\/pours\/new$/.exec(path)?.[1];
  if (!id) throw new Error(`${href} is no planner.`);
  const page = await NewPourPage({
    params: Promise.resolve({ id }),
    searchParams: Promise.resolve(Object.fromEntries(new URLSearchParams(query))),
  });
  const [form] = found<PlanFormProps>(page, PlanForm);
  if (!form) throw new Error('The planner has no form.');
  return { form, words: textOf(page) };
}

/** What the form sends when its key is pressed. */
const sent = ({ form }: { form: PlanFormProps }, systemId: number, typed: Partial<TypedPlan> = {}) => {
  const { river } = form;
  return {
    jobId: form.jobId,
    typed: { ...form.start, systemId: String(systemId), leakage: '0', loss: '', ...typed },
    river: river && { is: 'asked', area: river.area, labels: river.labels, asked: river.asked },
  };
};
let presses = 0;
function press(input: unknown, key?: string) {
  presses += 1;
  return keepPourAction(key ?? `press-of-a-test-${presses}`, input);
}
const poursOf = (jobId: number) => poursOfJob(test.book.read, jobId);

const knot = (x: number, y: number, note: string): NewMark => ({
  is: 'defect',
  kind: 'knot',
  place: { shape: 'circle', centre: { x: um(x), y: um(y) }, radius: um(20) },
  depth: { face: 'through' },
  decision: 'fill',
  note,
});

describe('a river that was searched for', () => {
  it('is planned from the answer: job chosen, slabs promised on a press, kept with its picture', async () => {
    const { systemId, jobId } = await readyToPour(test.book);
    const { species, labels } = await twoSlabs();
    const { row, href } = await searched(QUESTION, species);
    expect(row.facts.join(' ')).toContain('River 3 1/8 in to 3 3/16 in wide');
    const [, query = ''] = href.split('?');
    expect(href.startsWith('/jobs/pour-for?')).toBe(true);
    const choose = await PourForPage({
      searchParams: Promise.resolve(Object.fromEntries(new URLSearchParams(query))),
    });
    expect(textOf(choose)).toContain('searched on');

    const { href: straight } = await searched(QUESTION, species, jobId);
    const page = await planner(straight);
    const { form } = page;
    // 1500 × 80 mm between straight banks; two banks of 1500 mm by 40 mm are 0.12 m², 1.292 ft².
    expect(form.river).toMatchObject({ labels, area: 120_000, banks: [1500, 1500], searchedOn: TODAY });
    expect([form.river?.finished, form.river?.thickest]).toEqual([mm(40), mm(58)]);
    expect(form.start).toMatchObject({ name: 'River', from: 'river', riverDepth: '40 mm', sealArea: '1.292' });
    expect(form.named?.map(({ stands }) => stands.is)).toEqual(['free', 'free']);

    // Nothing is promised by opening it, nor by planning.
    for (const label of labels) {
      expect((await loadPiece(test.book.read, label))?.facts.promisedTo).toBeUndefined();
      expect(await giveAction(`give-${label}`, { label, act: 'promise', jobId })).toMatchObject({ ok: true });
    }
    expect((await planner(straight)).form.named?.map(({ stands }) => stands.is)).toEqual(['its-own', 'its-own']);

    const answered = await press(sent(page, systemId, { riverDepth: '58 mm' }));
    if (!answered.ok) throw new Error(answered.problem.what);
    const pour = await readPour(test.book.read, answered.answer.pourId);
    // 1500 × 80 × 58 mm.
    expect(pour?.kept.plan.need.void).toBe(6_960_000);
    expect(pour?.kept.depth).toBe(mm(58));
    expect(pour?.kept.river).toMatchObject({ labels, area: 120_000, searchedOn: TODAY });
    expect(pour?.kept.river?.woods).toHaveLength(2);
    expect(pour?.kept.figures.sealArea).toBe(Math.round(1.292 * 92_903.04));
  });

  it('is searched for again on the server: what the screen says of its area is only compared', async () => {
    const { systemId, jobId } = await readyToPour(test.book);
    const { species } = await twoSlabs();
    const page = await planner((await searched(QUESTION, species, jobId)).href);
    const input = sent(page, systemId);
    const forged = await press({ ...input, river: { ...input.river, area: 12_000 } });
    expect(forged).toMatchObject({ ok: false, problem: { code: 'river-changed' } });
    const other = await press({ ...input, river: { ...input.river, asked: 'make=river&shape=rectangle&l=no' } });
    expect(other).toMatchObject({
      ok: false,
      problem: { fields: { river: expect.stringContaining('Search for it') } },
    });
    const none = await press({ ...input, river: undefined });
    expect(none).toMatchObject({ ok: false, problem: { fields: { river: expect.stringContaining('not there') } } });
    expect(await press({ ...input, river: { is: 'kept', area: 120_000 } })).toMatchObject({
      ok: false,
      problem: { code: 'river-gone' },
    });
    expect(await poursOf(jobId)).toEqual([]);
    expect(await press(input)).toMatchObject({ ok: true });
  });

  it('is refused with what changed where a slab was measured anew meanwhile, and planned as it is now', async () => {
    const { systemId, jobId } = await readyToPour(test.book);
    const { species, labels } = await twoSlabs();
    const { href } = await searched(QUESTION, species, jobId);
    const before = await planner(href);
    // 160 mm and 300 mm of wood leave 140 mm of river.
    await measure(labels[0] ?? '', 80);
    const refused = await press(sent(before, systemId));
    expect(refused).toMatchObject({ ok: false, problem: { code: 'river-changed' } });
    if (!refused.ok) expect(refused.problem.what).toContain('measured or marked anew');
    const after = await planner(href);
    expect(after.form.river?.area).toBe(1500 * 140);
    const answered = await press(sent(after, systemId));
    if (!answered.ok) throw new Error(answered.problem.what);
    expect((await readPour(test.book.read, answered.answer.pourId))?.kept.plan.need.void).toBe(1500 * 140 * 40);
    // Narrower still, it gives the back no room: the page says so, and offers the other ways.
    await measure(labels[0] ?? '', 20);
    const gone = await planner(href);
    expect(gone.form.river).toBeUndefined();
    expect(gone.form.start.from).not.toBe('river');
    expect(gone.words).toContain('do not make this top any more');
  });

  it('is refused where a slab is promised to another job, or went', async () => {
    const { systemId, jobId } = await readyToPour(test.book);
    const { jobId: otherJob } = must(
      await addJob(test.book, by(), { name: 'Bench', purpose: 'client', client: '', dayOfUse: TODAY, note: '' }),
    );
    const { species, labels } = await twoSlabs();
    const [one = '', two = ''] = labels;
    const page = await planner((await searched(QUESTION, species, jobId)).href);
    must(await givePiece(test.book, by(), { label: one, act: 'promise', jobId: otherJob }));
    const promised = await press(sent(page, systemId));
    expect(promised).toMatchObject({ ok: false, problem: { code: 'river-slab-promised' } });
    if (!promised.ok) {
      expect(promised.problem.what).toContain('is promised to Bench');
      expect(promised.problem.kept).toContain('still here');
    }
    must(await givePiece(test.book, by(), { label: one, act: 'free' }));
    await cutInTwo(two);
    expect(await press(sent(page, systemId))).toMatchObject({ ok: false, problem: { code: 'river-slab-gone' } });
    expect(await poursOf(jobId)).toEqual([]);
  });

  it('is planned in slabs that were taken into the job already, with what else is ticked poured with it', async () => {
    const { systemId, jobId } = await readyToPour(test.book);
    const { species, labels } = await twoSlabs();
    const [label = ''] = labels;
    must(await changeMarks(test.book, by(), { label, add: [knot(1000, 60, 'hollow')], remove: [], why: '' }));
    const { href } = await searched(QUESTION, species, jobId);
    for (const each of labels) must(await givePiece(test.book, by(), { label: each, act: 'take', jobId }));
    const page = await planner(href);
    expect(page.form.named?.map(({ stands }) => stands.is)).toEqual(['its-own', 'its-own']);
    // A mark may lie in the river: nothing is ticked for the maker.
    expect(page.form.start.fills.map(({ on }) => on)).toEqual([false]);
    const fills = page.form.start.fills.map((fill) => ({ ...fill, on: true, area: '2', depth: '10 mm' }));
    const answered = await press(sent(page, systemId, { fills }));
    if (!answered.ok) throw new Error(answered.problem.what);
    const pour = await readPour(test.book.read, answered.answer.pourId);
    // 2 in² of 645.16 mm² by 10 mm beside the river.
    expect(pour?.kept.plan.need.void).toBe(Math.round(1500 * 80 * 40 + 2 * 645.16 * 10));
  });

  it('stands with its pour whatever becomes of its slabs, and is planned anew as it was kept', async () => {
    const { systemId, jobId } = await readyToPour(test.book);
    const { species, labels } = await twoSlabs();
    const page = await planner((await searched(QUESTION, species, jobId)).href);
    const input = sent(page, systemId);
    const first = await press(input, 'the-same-press-of-a-test');
    if (!first.ok) throw new Error(first.problem.what);
    await cutInTwo(labels[0] ?? '');
    // What asks again under the same key is answered as before; what asks anew is not.
    expect(await press(input, 'the-same-press-of-a-test')).toMatchObject({ ok: true, answer: first.answer });
    expect(await press({ ...input, typed: { ...input.typed, name: 'Another' } })).toMatchObject({
      ok: false,
      problem: { code: 'river-slab-gone' },
    });
    const pour = await readPour(test.book.read, first.answer.pourId);
    const river = pour?.kept.river;
    if (!pour || !river) throw new Error('The river was not kept.');
    const anew = await press({
      jobId,
      pourId: pour.id,
      typed: { ...input.typed, riverDepth: '50 mm' },
      river: { is: 'kept', area: river.area },
    });
    if (!anew.ok) throw new Error(anew.problem.what);
    const next = await readPour(test.book.read, anew.answer.pourId);
    expect(next?.kept.river).toEqual(river);
    expect(next?.kept.plan.need.void).toBe(1500 * 80 * 50);
    // Planned anew by another way, it has no river any more.
    const { river: _, ...rest } = pour.kept;
    const form = { ...rest.figures, space: { from: 'fills' as const, fills: [{ area: 30_000, depth: mm(10) }] } };
    const plain = must(
      await keepPour(test.book, by(), {
        jobId,
        pourId: anew.answer.pourId,
        systemId,
        name: 'River',
        figures: form,
        first: TODAY,
        reason: '',
        typed: {},
      }),
    );
    expect((await readPour(test.book.read, plain.pourId))?.kept.river).toBeUndefined();
  });

  it('is searched in two slabs of this book and no others', async () => {
    const { systemId, jobId } = await readyToPour(test.book);
    const { species } = await twoSlabs();
    const page = await planner((await searched(QUESTION, species, jobId)).href);
    const input = sent(page, systemId);
    const bad = await press({ ...input, river: { ...input.river, labels: ['S-NOTOURS'] } });
    expect(bad.ok).toBe(false);
    expect(
      refusedWith(
        await keepPour(test.book, by(), {
          jobId,
          systemId,
          name: 'River',
          first: TODAY,
          reason: '',
          typed: {},
          figures: { ...FIGURES, space: { from: 'fills', fills: [{ area: 1, depth: mm(1) }] } },
          river: { is: 'asked', asked: '', area: 1, labels: ['S2222222'], ...riverAsked() },
        }),
      ),
    ).toBe('river-slab-unknown');
  });
});

function riverAsked() {
  const { request, make } = unwrap(readQuestion(Object.fromEntries(new URLSearchParams(QUESTION)), TYPING).read);
  if (make.of !== 'river') throw new Error(make.of);
  return { request, river: make.river };
}

describe('what is marked to be filled on a slab', () => {
  const ONE =
    'make=one&shape=rectangle&l=1500 mm&w=250 mm&r=&thick=40 mm&edge=0&trim=0&grain=0&mc=&fill=yes&best=balanced';

  it('is offered to a pour from a one-piece top: what lies in the top ticked, what lies beyond it not', async () => {
    const { jobId } = await readyToPour(test.book);
    const { species, labels } = await twoSlabs();
    const [label = ''] = labels;
    must(
      await changeMarks(test.book, by(), {
        label,
        add: [knot(1000, 0, 'in the middle'), knot(1970, 0, 'at the end')],
        remove: [],
        why: '',
      }),
    );
    const { href, row } = await searched(ONE, species, jobId);
    const marks = (await loadPiece(test.book.read, label))?.marks.defects ?? [];
    const inTop = marks.find(({ note }) => note === 'in the middle');
    expect(row.pour).toMatchObject({ of: 'fills', labels: [label] });
    expect(row.pour?.marks).toContain(inTop?.id);
    const { form } = await planner(href);
    // Not promised to the job, it is offered all the same, and said to be free.
    expect(form.named?.map(({ stands }) => stands.is)).toEqual(['free']);
    expect(form.start.from).toBe('drawing');
    const top = row.views[0]?.top ?? [];
    const right = Math.max(...top.map(({ x }) => x));
    const ticks = Object.fromEntries(form.start.fills.map(({ name, on }) => [name.split(', ').at(-1), on]));
    expect(ticks).toEqual({ 'in the middle': true, 'at the end': right > um(1950) });
    // A disc 20 mm in radius, in square inches of 645.16 mm².
    const { area } = form.start.fills[0] ?? { area: '' };
    expect(Number(area)).toBeCloseTo((Math.PI * 400) / 645.16, 2);
  });

  it('is offered to the job that has the piece, and to no other', async () => {
    const one = await readyToPour(test.book);
    const two = await readyToPour(test.book);
    const [label = ''] = (await twoSlabs()).labels;
    must(await changeMarks(test.book, by(), { label, add: [knot(500, 0, '')], remove: [], why: '' }));
    const fillsFor = async (jobId: number, named: string[] = []) =>
      (await voidChoices(test.book, jobId, named)).fills.length;
    expect([await fillsFor(one.jobId), await fillsFor(one.jobId, [label])]).toEqual([0, 1]);
    must(await givePiece(test.book, by(), { label, act: 'promise', jobId: one.jobId }));
    expect([await fillsFor(one.jobId), await fillsFor(two.jobId, [label])]).toEqual([1, 0]);
    const { form } = await planner(pourHref('', { of: 'fills', labels: [label], marks: [] }, two.jobId));
    expect(form.named?.map(({ stands }) => stands)).toMatchObject([{ is: 'elsewhere', job: { id: one.jobId } }]);
  });
});
