export type WoodColours = { heart: string; sap: string; line: string; bark: string };

const WIDTH = 1280;
const HEIGHT = 640;
const STEPS = 64;
/** How far from the middle of the log the saw passed, and how much the log tapers over the length. */
const FROM_PITH = 38;
const TAPER = 96;

/**
 * The face of a slab as SVG: two live edges, sapwood and heart. Growth rings are cones cut by a plane beside their axis,
 * so they show as arches along the length, as on plain-sawn wood. The same `seed` draws the same slab.
 */
export function drawWoodFace(seed: number, colours: WoodColours, checked: boolean): string {
  const next = sequence(seed);
  const middle = HEIGHT / 2 + (next() - 0.5) * 60;
  const meander = wander(next, 34);
  const upper = wander(next, 26);
  const lower = wander(next, 26);
  const points = (offset: (at: number) => number) =>
    [...Array(STEPS + 1).keys()].map(
      (nr) => `${(nr * WIDTH) / STEPS} ${(middle + meander(nr) + offset(nr)).toFixed(1)}`,
    );
  const top = points((nr) => -248 + (nr * TAPER) / STEPS / 2 + upper(nr));
  const bottom = points((nr) => 248 - (nr * TAPER) / STEPS / 2 + lower(nr));
  const heart = [
    ...points((nr) => -(across(205, nr) ?? 0) + upper(nr) / 2),
    ...points((nr) => (across(205, nr) ?? 0) + lower(nr) / 2).reverse(),
  ];
  const outline = `M${top.join('L')}L${[...bottom].reverse().join('L')}Z`;
  let radius = FROM_PITH + 4;
  let rings = '';
  while (radius < 330) {
    rings += ring(radius, points, 0.9 + next() * 1.6, 0.3 + next() * 0.35);
    radius += 6 + next() * 9;
  }
  const bark = `fill="none" stroke="${colours.bark}" stroke-width="14" stroke-linejoin="round"`;
  const [y0, y1] = [middle + meander(0), middle + meander(14)];
  const check = checked
    ? `<path d="M0 ${y0 - 7}Q150 ${y0 - 12} 286 ${y1}Q150 ${y0 + 5} 0 ${y0 + 9}Z" fill="#1d140d"/>`
    : '';
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}">
    <rect width="${WIDTH}" height="${HEIGHT}" fill="#8f8b84"/>
    <clipPath id="face"><path d="${outline}"/></clipPath>
    <filter id="soft"><feGaussianBlur stdDeviation="7"/></filter>
    <g clip-path="url(#face)">
      <rect width="${WIDTH}" height="${HEIGHT}" fill="${colours.sap}"/>
      <path d="M${heart.join('L')}Z" fill="${colours.heart}" filter="url(#soft)"/>
      <g fill="none" stroke="${colours.line}" stroke-linejoin="round">${rings}</g>${check}
    </g>
    <path d="M${top.join('L')}" ${bark}/><path d="M${bottom.join('L')}" ${bark}/></svg>`;
}

/** Half the width at which the plane cuts a ring at a step along the length; undefined beyond the tip of its arch. */
function across(radius: number, nr: number): number | undefined {
  const here = radius - (nr * TAPER) / STEPS;
  return here > FROM_PITH ? Math.sqrt(here * here - FROM_PITH * FROM_PITH) : undefined;
}

/** One ring: both its sides, meeting in a tip where the log has tapered below it. */
function ring(
  radius: number,
  points: (offset: (nr: number) => number) => string[],
  width: number,
  opacity: number,
): string {
  const there = [...Array(STEPS + 1).keys()].filter((nr) => across(radius, nr) !== undefined).length;
  const upper = points((nr) => -(across(radius, nr) ?? 0)).slice(0, there);
  const lower = points((nr) => across(radius, nr) ?? 0).slice(0, there);
  const path =
    there <= STEPS ? `M${[...upper, ...lower.reverse()].join('L')}` : `M${upper.join('L')}M${lower.join('L')}`;
  return `<path d="${path}" stroke-width="${width.toFixed(2)}" opacity="${opacity.toFixed(2)}"/>`;
}

/** A slow wave along the length, at most about `most` high, never the same twice. */
function wander(next: () => number, most: number): (nr: number) => number {
  const waves = [1, 2.3, 5.1, 11].map((pace) => ({
    pace,
    phase: next() * 6.28,
    height: (most * (0.4 + next() * 0.6)) / pace,
  }));
  return (nr) =>
    waves.reduce((sum, { pace, phase, height }) => sum + height * Math.sin(phase + (pace * nr * 4) / STEPS), 0);
}

/** Numbers from 0 to 1, the same for the same seed (Park and Miller's minimal standard generator, 1988). */
function sequence(seed: number): () => number {
  let state = (seed % 2_147_483_646) + 1;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
