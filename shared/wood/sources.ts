/** How the people who wrote a figure down here came by it. */
type Standing = 'read' | 'restated' | 'memory' | 'common-practice';

export type Source = {
  readonly publication: string;
  readonly where: string;
  readonly standing: Standing;
};

const HANDBOOK = 'Wood Handbook, Forest Products Laboratory FPL-GTR-190 (2010)';
const source = (publication: string, where: string, standing: Standing): Source => ({ publication, where, standing });

/**
 * Every publication a figure or formula of this room rests on. `read`: the table or text was read. `restated`: a third
 * party printed it and named the publication. `memory`: written down from memory, the page was not opened.
 * `common-practice`: no publication stands behind it. `WOOD_SOURCES['table-4-3'].where` is `Table 4-3`.
 */
export const WOOD_SOURCES = {
  'table-4-3': source(HANDBOOK, 'Table 4-3, shrinkage of domestic woods, green to ovendry', 'read'),
  'table-4-3-memory': source(HANDBOOK, 'Table 4-3, shrinkage of domestic woods, green to ovendry', 'memory'),
  'table-4-4': source(HANDBOOK, 'Table 4-4, shrinkage of imported woods, read in a copy with shifted columns', 'read'),
  'table-4-4-memory': source(HANDBOOK, 'Table 4-4, shrinkage of imported woods', 'memory'),
  'table-13-5': source(HANDBOOK, 'Table 13-5, dimensional change coefficients, 6 to 14 % MC', 'read'),
  'table-13-5-memory': source(HANDBOOK, 'Table 13-5, dimensional change coefficients, 6 to 14 % MC', 'memory'),
  'table-13-5-restated': source(
    'Wood Handbook, Agriculture Handbook 72 (1987)',
    'dimensional change coefficients as a flooring association restates them (Technical Publication A200, p. 7)',
    'restated',
  ),
  'white-fir-example': source(HANDBOOK, 'p. 13-18, the worked example for white fir', 'read'),
  'ref-species': source(
    'USDA Forest Inventory and Analysis, table REF_SPECIES',
    'specific gravity on green volume and on volume at 12 % MC, the figures of Wood Handbook Table 5-3',
    'read',
  ),
  'table-5-3-memory': source(HANDBOOK, 'Table 5-3, specific gravity of domestic woods, green and at 12 % MC', 'memory'),
  'table-5-5-memory': source(HANDBOOK, 'Table 5-5, specific gravity of imported woods', 'memory'),
  'din-68100-memory': source('DIN 68100 (2010)', 'differential swelling, per cent per per cent of MC', 'memory'),
  'en-350-memory': source('EN 350 (2016)', 'Annex B, mean density at 12 % MC, divided by 1120 kg/m³', 'memory'),
  'equation-4-5': source(HANDBOOK, 'Equation 4-5, p. 4-3, and the constants beside it', 'restated'),
  'equation-4-8': source(HANDBOOK, 'Chapter 4, shrinkage in proportion to MC below fibre saturation', 'memory'),
  'equation-4-10': source(HANDBOOK, 'Chapter 4, specific gravity and density at a moisture content', 'memory'),
  'moisture-content': source(
    HANDBOOK,
    'Chapter 4, moisture content is the weight of the water over that of the dry wood',
    'memory',
  ),
  'most-moisture': source(HANDBOOK, 'Chapter 4, maximum moisture content', 'memory'),
  'equation-13-2': source(HANDBOOK, 'Equation 13-2, p. 13-18', 'read'),
  'equation-13-3': source(HANDBOOK, 'Equation 13-3, p. 13-18', 'memory'),
  'chapter-13-meters': source(HANDBOOK, 'Chapter 13, moisture meters: range, and temperature correction', 'read'),
  'air-drying-times': source(
    'Forest Products Laboratory Technical Note 233 (1960)',
    'approximate days to air dry 1 in lumber to 20 % MC, shortest and longest',
    'memory',
  ),
  'tapered-measurement': source(
    'NHLA rules for the measurement and inspection of hardwood',
    'general instructions, lumber that tapers in width',
    'memory',
  ),
  'hardwood-measurement': source(
    'American Hardwood Export Council after the NHLA rules book',
    'measurement: surface measure, board feet, bundle tally for export',
    'read',
  ),
  'hardwood-thickness': source(
    'NHLA rules book and Wood Handbook chapter 6, as public size charts print them',
    'standard rough and surfaced thickness',
    'restated',
  ),
  'hardwood-thickness-memory': source('NHLA rules book', 'standard surfaced thickness', 'memory'),
  'ps-20': source(
    'American Softwood Lumber Standard PS 20, as public size charts print it',
    'nominal and dressed dry sizes of boards and dimension lumber',
    'restated',
  ),
  'niosh-94-110': source(
    'NIOSH 94-110, Applications Manual for the Revised NIOSH Lifting Equation (1994)',
    'lifting equation and multipliers; coupling multiplier from memory',
    'read',
  ),
  geometry: source('geometry', 'a shallow circular arc rises with the square of its chord', 'common-practice'),
  'geometry-area': source('geometry', 'a trapezoid is its mean width times its length', 'common-practice'),
  'geometry-edges': source(
    'geometry',
    'between two points a straight edge is widest at one of them',
    'common-practice',
  ),
  'common-practice': source('common practice', 'no publication', 'common-practice'),
} as const satisfies Record<string, Source>;

export type WoodSourceId = keyof typeof WOOD_SOURCES;
