/** Finishes that cure in air; cloths soaked with them can heat up by themselves (NFPA 921, spontaneous ignition of drying oils; from memory). */
const OILS = new Set(['hardwax-oil', 'two-part-oil', 'oil-finish', 'varnish']);
const FLAMMABLE = new Set(['lacquer', 'pre-catalysed-lacquer', 'shellac-mixed', 'contact-cement']);
/** Amines of epoxy hardeners and isocyanates: occupational sensitisers (HSE EH40 and INDG 95; from memory). */
const SENSITISERS = new Set(['resin-b', 'two-part-oil', 'polyurethane-glue']);

/** What can hurt while this is handled, in short sentences. General caution; the safety data sheet outranks it. */
export function cautionsOf(kind: string, hazards: readonly string[]): string[] {
  const cautions: string[] = [];
  if (SENSITISERS.has(kind)) {
    cautions.push('It can make skin or lungs allergic for good: gloves that resist it, eye protection, fresh air.');
  }
  if (hazards.includes('GHS02') || FLAMMABLE.has(kind)) {
    cautions.push('It burns: no flame, spark or hot tool near it, and air the room.');
  }
  if (OILS.has(kind)) {
    cautions.push(
      'Cloths soaked with it can catch fire by themselves: dry them flat outdoors, or keep them under water in a closed metal can.',
    );
  }
  if (kind === 'resin-a' || kind === 'resin-b') {
    cautions.push('Mixed resin in a thick mass can boil and smoke: keep to the depth and the ratio of the data sheet.');
  }
  return cautions;
}
