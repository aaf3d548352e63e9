import type { DemoAct, DemoShop } from '@/app/_server/demo/demo-shop';
import { planCoats } from '@/app/_server/finish/plan-coats';
import { addPart } from '@/app/_server/jobs/add-part';
import { addStep } from '@/app/_server/timeline/add-step';
import { finishStep } from '@/app/_server/timeline/finish-step';
import { openDay } from '@/shared/timeline/closed-days';
import type { StepKind } from '@/shared/timeline/step';

const MM = 1_000_000;
const SUNDAYS = { weekdays: [0], ranges: [] };

type Part = 'Pond top' | 'Ash base';

const STEPS: { kind: StepKind; name: string; use: number; part?: Part }[] = [
  { kind: 'assembly', name: 'Glue up the base', use: -4, part: 'Ash base' },
  { kind: 'flatten', name: 'Flatten the top', use: 25, part: 'Pond top' },
  { kind: 'assembly', name: 'Set the top on its base', use: 39 },
  { kind: 'delivery', name: 'Taken to Ines Calloway', use: 47 },
];

const COATS: { part: Part; areaMm2: number | null; use: number }[] = [
  { part: 'Ash base', areaMm2: 620_000, use: 1 },
  { part: 'Pond top', areaMm2: null, use: 27 },
];

/** The two parts of the pond table: its base is oiled while its top is poured and cures. */
export const DEMO_BASE_AND_TOP: readonly DemoAct[] = [
  {
    daysAgo: 7,
    hour: 9,
    by: 'maren',
    async act(shop) {
      const jobId = shop.id('job pond');
      for (const { part = null, use, ...step } of STEPS) {
        const partId = part && shop.id(`part ${part}`);
        const { entryId } = await shop.run(addStep, {
          ...step,
          jobId,
          day: openDay(shop.day(use), SUNDAYS),
          note: '',
          partId,
        });
        const row = await shop.book.read.step.findFirstOrThrow({ where: { entryId }, select: { id: true } });
        shop.keep(`step ${step.name}`, row.id);
      }
    },
  },
  {
    daysAgo: 7,
    hour: 10,
    by: 'maren',
    async act(shop) {
      const named = { name: 'Hardwax oil, satin' };
      const product = await shop.book.read.product.findFirstOrThrow({ where: named, select: { id: true } });
      for (const { part, areaMm2, use } of COATS) {
        await shop.run(planCoats, {
          jobId: shop.id('job pond'),
          productId: product.id,
          partIds: [shop.id(`part ${part}`)],
          faces: 2,
          areaMm2,
          coats: 2,
          coverageTenths: null,
          lossPercent: 10,
          firstDay: shop.day(use),
        });
      }
    },
  },
  {
    daysAgo: 4,
    hour: 15,
    by: 'tobi',
    act: (shop) => shop.run(finishStep, { stepId: shop.id('step Glue up the base'), doneOn: shop.on, reason: '' }),
  },
];

/** Writes down the parts of the pond table, before anything is planned for them. */
export async function namePartsOfPond(shop: DemoShop): Promise<void> {
  const top = { kind: 'top' as const, name: 'Pond top', shape: 'rectangle' as const, mm: [600, 200, 60] };
  const base = { kind: 'base' as const, name: 'Ash base', shape: '' as const, mm: [520, 180, 380] };
  for (const { mm, ...part } of [top, base]) {
    const [lengthNm = null, widthNm = null, thicknessNm = null] = mm.map((length) => length * MM);
    const sizes = { lengthNm, widthNm, thicknessNm };
    const { entryId } = await shop.run(addPart, { ...part, ...sizes, jobId: shop.id('job pond'), count: 1, note: '' });
    const row = await shop.book.read.jobPart.findFirstOrThrow({ where: { entryId }, select: { id: true } });
    shop.keep(`part ${part.name}`, row.id);
  }
}
