import type { DemoAct, DemoShop } from '@/app/_server/demo/demo-shop';
import { noteFinishSheet } from '@/app/_server/finish/note-finish-sheet';
import { planCoats } from '@/app/_server/finish/plan-coats';
import { addPart } from '@/app/_server/jobs/add-part';
import { changeJob } from '@/app/_server/jobs/change-job';
import type { PartFields } from '@/app/_server/jobs/part-fields';
import { setStage } from '@/app/_server/jobs/set-stage';
import { addClosedDays } from '@/app/_server/timeline/add-closed-days';
import { addStep } from '@/app/_server/timeline/add-step';
import { finishStep } from '@/app/_server/timeline/finish-step';
import { setClosedWeekdays } from '@/app/_server/timeline/set-closed-weekdays';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { FinishSheet } from '@/shared/finish/finish-sheet';
import type { StepKind } from '@/shared/timeline/step';

const MM = 1_000_000;

const SHEETS: { key: string; product: string; sheet: FinishSheet }[] = [
  {
    key: 'hardwax',
    product: 'Hardwax oil, satin',
    sheet: { from: 'sheet', coverageTenths: 240, coats: 2, recoatFromHours: 12, recoatToHours: 48, cureDays: 7 },
  },
  {
    key: 'varnish',
    product: 'Rubbing varnish, gloss',
    sheet: {
      from: 'sheet',
      coverageTenths: 140,
      coats: 4,
      recoatFromHours: 6,
      recoatToHours: 24,
      cureDays: 10,
      sandBetween: true,
    },
  },
  {
    key: 'waterborne',
    product: 'Waterborne topcoat, matt',
    sheet: { from: 'typed', coverageTenths: 100, coats: 3, recoatFromHours: 3, recoatToHours: 72, cureDays: 14 },
  },
];

type Part = Pick<PartFields, 'kind' | 'name' | 'count' | 'shape'> & { mm: [number, number, number] };

const TOP_OF_BAR: Part = { kind: 'top', name: 'Bar top', count: 1, shape: 'rectangle', mm: [3400, 720, 48] };
const PARTS: { job: string; part: Part }[] = [
  { job: 'bar', part: TOP_OF_BAR },
  { job: 'bar', part: { kind: 'base', name: 'Trestle', count: 3, shape: '', mm: [900, 620, 60] } },
  { job: 'side', part: { kind: 'top', name: 'Round top', count: 1, shape: 'round', mm: [620, 620, 32] } },
  { job: 'side', part: { kind: 'base', name: 'Leg', count: 3, shape: '', mm: [560, 45, 45] } },
  { job: 'bench', part: { kind: 'top', name: 'Seat', count: 1, shape: 'rectangle', mm: [1400, 360, 40] } },
];

const STEPS: { job: string; kind: StepKind; name: string; use: number; done?: number }[] = [
  { job: 'bar', kind: 'wood-dry', name: 'Bar slab dry', use: -2, done: 3 },
  { job: 'bar', kind: 'flatten', name: 'Flatten both faces', use: 5 },
  { job: 'bar', kind: 'assembly', name: 'Fit the trestles', use: 8 },
  { job: 'bar', kind: 'delivery', name: 'Delivery to the inn', use: 30 },
  { job: 'side', kind: 'wood-dry', name: 'Walnut dry', use: 12 },
  { job: 'side', kind: 'flatten', name: 'Flatten and turn the edge', use: 16 },
  { job: 'side', kind: 'delivery', name: 'Collected', use: 44 },
  { job: 'bench', kind: 'flatten', name: 'Plane the seat', use: -1 },
  { job: 'bench', kind: 'assembly', name: 'Peg the legs', use: 6 },
];

const COATS: { job: string; product: string; part: string; coats: number; faces: 1 | 2; use: number }[] = [
  { job: 'bar', product: 'hardwax', part: 'Bar top', coats: 3, faces: 2, use: 12 },
  { job: 'side', product: 'varnish', part: 'Round top', coats: 4, faces: 2, use: 20 },
  { job: 'bench', product: 'hardwax', part: 'Seat', coats: 2, faces: 2, use: 9 },
];

/** Closed days, what the finishes' sheets say, and three jobs with their parts, steps and coats. */
export const DEMO_TIME_LINES: readonly DemoAct[] = [
  {
    daysAgo: 230,
    hour: 9,
    by: 'maren',
    act: (shop) => shop.run(setClosedWeekdays, { weekdays: [0] }),
  },
  {
    daysAgo: 20,
    hour: 9,
    by: 'maren',
    act: (shop) => shop.run(addClosedDays, { from: shop.day(33), to: shop.day(37), name: 'Away, the whole workshop' }),
  },
  ...SHEETS.map(
    ({ product, sheet }): DemoAct => ({
      daysAgo: 120,
      hour: 11,
      by: 'tobi',
      act: async (shop) => shop.run(noteFinishSheet, { productId: await productId(shop, product), sheet }),
    }),
  ),
  ...PARTS.map(
    ({ job, part: { mm, ...part } }): DemoAct => ({
      daysAgo: 12,
      hour: 9,
      by: 'maren',
      act: (shop) =>
        shop.run(addPart, {
          ...part,
          jobId: shop.id(`job ${job}`),
          lengthNm: mm[0] * MM,
          widthNm: mm[1] * MM,
          thicknessNm: mm[2] * MM,
          note: '',
        }),
    }),
  ),
  ...STEPS.map(
    ({ job, kind, name, use, done }): DemoAct => ({
      daysAgo: 11,
      hour: 10,
      by: 'maren',
      act: async (shop) => {
        const jobId = shop.id(`job ${job}`);
        const { entryId } = await shop.run(addStep, { jobId, kind, name, day: shop.day(use), note: '' });
        if (done !== undefined) shop.keep(`step ${name}`, await stepOf(shop, entryId));
      },
    }),
  ),
  ...COATS.map(
    ({ job, product, part, coats, faces, use }): DemoAct => ({
      daysAgo: 10,
      hour: 10,
      by: 'maren',
      async act(shop) {
        const jobId = shop.id(`job ${job}`);
        const named = SHEETS.find(({ key }) => key === product)?.product ?? '';
        const row = await shop.book.read.jobPart.findFirstOrThrow({ where: { jobId, name: part } });
        await shop.run(planCoats, {
          jobId,
          productId: await productId(shop, named),
          partIds: [row.id],
          faces,
          areaMm2: null,
          coats,
          coverageTenths: null,
          lossPercent: 10,
          firstDay: shop.day(use),
        });
      },
    }),
  ),
  ...STEPS.flatMap(({ name, done }): DemoAct[] =>
    done === undefined
      ? []
      : [
          {
            daysAgo: done,
            hour: 14,
            by: 'tobi',
            act: (shop) => shop.run(finishStep, { stepId: shop.id(`step ${name}`), doneOn: shop.on, reason: '' }),
          },
        ],
  ),
  dueOn('bar', 9, 28, 'Ask for Hob Gannet at the back door.'),
  dueOn('side', 9, 60, 'ilse@hartnoll.example'),
  ...['bar', 'bench'].map(
    (job): DemoAct => ({
      daysAgo: 6,
      hour: 8,
      by: 'maren',
      act: (shop) => shop.run(setStage, { jobId: shop.id(`job ${job}`), stage: 'making', reason: '' }),
    }),
  ),
];

function dueOn(job: string, daysAgo: number, due: number, contact: string): DemoAct {
  return {
    daysAgo,
    hour: 8,
    by: 'maren',
    async act(shop) {
      const jobId = shop.id(`job ${job}`);
      const row = await shop.book.read.job.findUniqueOrThrow({ where: { id: jobId } });
      await shop.run(changeJob, {
        jobId,
        name: row.name,
        purpose: 'client',
        client: row.client,
        note: row.note,
        dayOfUse: row.dayOfUse as CalendarDate,
        dueOn: shop.day(due),
        contact,
      });
    },
  };
}

async function productId(shop: DemoShop, name: string): Promise<number> {
  return (await shop.book.read.product.findFirstOrThrow({ where: { name }, select: { id: true } })).id;
}

async function stepOf(shop: DemoShop, entryId: number): Promise<number> {
  return (await shop.book.read.step.findFirstOrThrow({ where: { entryId }, select: { id: true } })).id;
}
