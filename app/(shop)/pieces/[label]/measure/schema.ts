import { z } from 'zod';
import type { MeasureByStations } from '@/app/_server/shapes/measure-by-stations';
import { thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import type { Typing } from '@/app/(shop)/arrive/read-fields';
import { readChalk, unfinished } from '@/app/(shop)/pieces/[label]/measure/chalk';

const station = z.object({ at: words(40), left: words(40), right: words(40) });
const MOST_STATIONS = 200;

/** Stations as typed. What is wrong stands beside the value it is wrong with. */
export function measureSchema({ prefer }: Typing): z.ZodType<MeasureByStations> {
  return z
    .object({
      label: thingLabel,
      why: words(500),
      stations: z.array(station).max(MOST_STATIONS, `Measure at no more than ${MOST_STATIONS} stations.`),
      gaps: z.array(z.array(station).max(MOST_STATIONS)).max(20, 'Mark no more than 20 gaps.'),
    })
    .transform(({ label, why, ...typed }, context) => {
      const { line, problems, outline } = readChalk(typed, prefer);
      const wrong = { ...unfinished(typed), ...problems };
      for (const [key, message] of Object.entries(wrong)) context.addIssue({ code: 'custom', path: [key], message });
      if (Object.keys(wrong).length === 0 && !outline) {
        const message = 'Measure both ends, and the middle: two stations at the least.';
        context.addIssue({ code: 'custom', path: ['0.at'], message });
      }
      return outline ? { label, why, chalkLine: line } : z.NEVER;
    });
}
