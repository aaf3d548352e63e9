import { err, ok, type Result } from '@/shared/result/result';
import type { Nanometres } from '@/shared/units/nanometres';
import { type Microlitres, microlitres } from '@/shared/units/stock-unit';

/** A slice across a void: where it is along it, and its area in square millimetres. */
export type Section = { readonly at: Nanometres; readonly area: number };

export type SectionVolume = {
  readonly volume: Microlitres;
  /** Which rule each stretch was reckoned by, in order. */
  readonly rules: readonly ('prismoidal' | 'end-areas')[];
};

export type SectionError = {
  readonly code: 'too-few-sections' | 'sections-out-of-order' | 'bad-area';
  readonly section: number;
};

/**
 * The volume of a void from slices across it. Where two neighbouring stretches are equally long they go together by the
 * prismoidal formula, L/6·(first + 4·middle + last); a stretch left alone by the mean of its end areas, or, where `between`
 * knows the area half way from one slice to the next, by the prismoidal formula too. So an odd number of evenly spaced
 * slices is Simpson's rule, and an even number ends in a trapezoid. Fails with the slice to look at: two
 * at least, each further along than the last, areas zero or more. Areas of 1000, 2000 and 1000 mm² at 0, 500 and 1000 mm
 * are 1000/6·(1000 + 8000 + 1000) mm³. Rule: USDA Forest Products and surveying handbooks alike (Newton's formula,
 * Smalian's formula for one stretch); from memory.
 */
export function sectionVolume(
  sections: readonly Section[],
  between?: (section: number) => number,
): Result<SectionVolume, SectionError> {
  if (sections.length < 2) return err({ code: 'too-few-sections', section: Math.max(0, sections.length - 1) });
  const bad = sections.findIndex(({ area }) => !Number.isFinite(area) || area < 0);
  if (bad >= 0) return err({ code: 'bad-area', section: bad });
  const disordered = sections.findIndex(({ at }, nr) => nr > 0 && at <= (sections[nr - 1]?.at ?? at));
  if (disordered >= 0) return err({ code: 'sections-out-of-order', section: disordered });

  let volume = 0;
  const rules: ('prismoidal' | 'end-areas')[] = [];
  for (let nr = 0; nr + 1 < sections.length; ) {
    const [first, second, third] = [sections[nr], sections[nr + 1], sections[nr + 2]];
    if (!first || !second) break;
    const length = (second.at - first.at) / 1e6;
    if (third && third.at - second.at === second.at - first.at) {
      volume += ((2 * length) / 6) * (first.area + 4 * second.area + third.area);
      rules.push('prismoidal');
      nr += 2;
    } else {
      const middle = between?.(nr);
      volume +=
        middle === undefined
          ? (length * (first.area + second.area)) / 2
          : (length / 6) * (first.area + 4 * middle + second.area);
      rules.push(middle === undefined ? 'end-areas' : 'prismoidal');
      nr += 1;
    }
  }
  return ok({ volume: microlitres(Math.round(volume)), rules });
}
