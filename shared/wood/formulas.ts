import type { WoodSourceId } from '@/shared/wood/sources';

export type Formula = { readonly written: string; readonly says: string; readonly source: WoodSourceId };

const formula = (written: string, says: string, source: WoodSourceId): Formula => ({ written, says, source });

/** Every formula of this room as it may be shown on a screen, with its source. MC and EMC are per cent of the dry weight. */
export const WOOD_FORMULAS = {
  emc: formula(
    'EMC = 1800/W · [ Kh/(1−Kh) + (K₁Kh + 2K₁K₂K²h²)/(1 + K₁Kh + K₁K₂K²h²) ]',
    'Moisture content wood settles at in air of this temperature and relative humidity h; W, K, K₁ and K₂ depend on temperature.',
    'equation-4-5',
  ),
  'emc-inverse': formula(
    'h so that EMC(T, h) = target',
    'Relative humidity at which wood settles at the target, found by halving the interval.',
    'equation-4-5',
  ),
  'specific-gravity': formula(
    '1/G(M) is a straight line in M below 30 %, and constant above',
    'Through the published figures for green wood and for 12 %; from one of them with the shrinkage by volume; else with 0.265 per 30 %.',
    'equation-4-10',
  ),
  'most-moisture': formula(
    'M max = 100 · (1.54 − G) / (1.54 · G) %',
    'Wood whose cells are full of water; G on green volume, 1.54 the specific gravity of the cell wall.',
    'most-moisture',
  ),
  density: formula('ρ = 1000 · G · (1 + M/100) kg/m³', 'Density at a moisture content.', 'equation-4-10'),
  mass: formula('m = ρ · V', 'Mass of a volume at its moisture content.', 'equation-4-10'),
  'mass-at-moisture': formula(
    'm₂ = m₁ · (1 + M₂/100) / (1 + M₁/100)',
    'The same dry wood with more or less water in it.',
    'moisture-content',
  ),
  'three-width-area': formula(
    'A = L · (start + 2 · middle + end) / 4',
    'Face between three widths, the middle one halfway along, with straight edges between them.',
    'geometry-area',
  ),
  'outline-area': formula(
    'A = ½ · Σ (xᵢ · yᵢ₊₁ − xᵢ₊₁ · yᵢ), gaps taken off',
    'Face inside the measured outline, straight between its points (the surveyor’s formula).',
    'geometry-area',
  ),
  'plate-volume': formula('V = A · T', 'A face times one thickness.', 'geometry-area'),
  'usable-width': formula(
    'w(x) = the widest unbroken run of wood across at x',
    'Between measured points the edges are straight, so the narrowest and the widest stand where an edge turns.',
    'geometry-edges',
  ),
  'tapered-width': formula(
    'W = width a third of the length in from the narrower end',
    'Where the hardwood rule measures a board that tapers.',
    'tapered-measurement',
  ),
  'surface-measure': formula(
    'SM = width in × whole feet / 12, to the nearest whole',
    'Square feet of face by the hardwood rule; an exact half goes up, and in a tally up and down in turn.',
    'hardwood-measurement',
  ),
  'hardwood-board-feet': formula(
    'BF = SM × thickness in (at least 1)',
    'Board feet by the hardwood seller’s rule.',
    'hardwood-measurement',
  ),
  'softwood-board-feet': formula('BF = T in × W in × L ft / 12', 'Board feet from nominal sizes.', 'ps-20'),
  'true-board-feet': formula('BF = V / 144 in³', 'Board feet of what is really there.', 'hardwood-measurement'),
  'shrinkage-from-green': formula(
    'S(M) = S₀ · (30 − M)/30',
    'Shrinkage from green to a moisture content below 30 %.',
    'equation-4-8',
  ),
  'movement-coefficient': formula('ΔD = D · C · (MF − MI)', 'Change of width between 6 and 14 % MC.', 'equation-13-2'),
  'movement-shrinkage': formula(
    'ΔD = D · (MF − MI) / (3000/S − 30 + MI)',
    'Change of width when either moisture content is outside 6 to 14 %; none above 30 %.',
    'equation-13-3',
  ),
  'mixed-cut': formula(
    'C = C_R + (C_T − C_R) · share',
    'Share of tangential movement: quarter sawn 0, rift ½, flat 1, unknown 1 (the cautious end).',
    'common-practice',
  ),
  'slot-each-side': formula(
    'room = half-span movement from the day it is fixed, plus clearance',
    'How far a screw must be able to travel towards and away from the fixed line.',
    'common-practice',
  ),
  'meter-temperature': formula(
    'correction = 0.5 point per 10 °F colder than the meter’s own temperature',
    'A pin meter reads low in cold wood and high in warm wood.',
    'chapter-13-meters',
  ),
  'drying-forecast': formula(
    'M(t) = EMC + (M₀ − EMC) · e^(−kt)',
    'Approach to the room’s EMC; k from thickness and species, sharpened by the piece’s own readings.',
    'air-drying-times',
  ),
  'flatten-full': formula(
    'left = thickness − cup − bow − twist/2 − allowances',
    'Thickness left when flattened at full size. A twist shimmed at both high corners costs half of it.',
    'geometry',
  ),
  'flatten-cut-first': formula(
    'cup·(w/W)², bow·(l/L)², twist·(w·l)/(W·L)',
    'Deviation left after cutting to size first.',
    'geometry',
  ),
  'recommended-weight': formula(
    'RWL = 23 kg · HM · VM · DM · AM · FM · CM',
    'Most that nearly all healthy workers can lift in this way.',
    'niosh-94-110',
  ),
  'lifting-index': formula('LI = load each / RWL', 'Above 1 the lift strains some, above 3 many.', 'niosh-94-110'),
} as const satisfies Record<string, Formula>;

export type FormulaId = keyof typeof WOOD_FORMULAS;
