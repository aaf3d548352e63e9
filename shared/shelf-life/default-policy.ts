import type { Life } from '@/shared/calendar/life';
import { inspectionLife } from '@/shared/shelf-life/inspection-life';
import type { MaterialKind } from '@/shared/shelf-life/material-kinds';
import type { Policy, PolicyKind } from '@/shared/shelf-life/types/policy';

/** A policy to start from, with the sentence that says where it comes from. */
export type DefaultPolicy = Policy & {
  readonly says: string;
  /** How long a passed inspection is taken to hold, when the material is one that can be inspected. */
  readonly suggestedInspectionLife?: Life;
};

type Row = {
  readonly kind: PolicyKind;
  readonly stated?: Life;
  readonly opened?: Life;
  readonly care: number;
  readonly freezingRuins?: true;
  readonly colourShows?: true;
  readonly storage?: Policy['storage'];
  readonly says: string;
};

const weeks = (count: number): Life => ({ count, unit: 'week' });
const months = (count: number): Life => ({ count, unit: 'month' });
const FOLLOW = 'No default: follow the container. Without its date it needs an inspection.';

const ROWS: Record<MaterialKind, Row> = {
  'resin-a': {
    kind: 'inspectable',
    stated: months(12),
    opened: months(6),
    care: 30,
    colourShows: true,
    storage: { leastC: 15, mostC: 27 },
    says: 'Said to keep from one year to many by technical bulletins; 12 months sealed and 6 opened is the cautious end (common practice).',
  },
  'resin-b': {
    kind: 'inspectable',
    stated: months(12),
    opened: months(6),
    care: 30,
    colourShows: true,
    storage: { leastC: 15, mostC: 27 },
    says: 'The hardener usually limits the pair, by technical bulletins; 12 months sealed and 6 opened is the cautious end (common practice).',
  },
  pigment: { kind: 'keeps', care: 0, colourShows: true, says: 'Keeps when dry and closed (common practice).' },
  'hardwax-oil': {
    kind: 'inspectable',
    stated: months(24),
    opened: months(6),
    care: 30,
    says: 'Most finishes are said to keep 3 years, by the trade press; 24 months sealed and 6 opened is cautious (common practice).',
  },
  'two-part-oil': { kind: 'inspectable', care: 30, says: FOLLOW },
  'oil-finish': {
    kind: 'inspectable',
    stated: months(36),
    opened: months(12),
    care: 30,
    says: 'Most finishes are said to keep 3 years, by the trade press; 12 months opened is common practice.',
  },
  varnish: {
    kind: 'inspectable',
    stated: months(36),
    opened: months(12),
    care: 30,
    says: 'Most finishes are said to keep 3 years, by the trade press; 12 months opened is common practice.',
  },
  waterborne: {
    kind: 'inspectable',
    stated: months(12),
    opened: months(6),
    care: 30,
    freezingRuins: true,
    storage: { leastC: 5, mostC: 30 },
    says: 'One year, and freezing ruins it, by the trade press and technical bulletins; 6 months opened is common practice.',
  },
  lacquer: {
    kind: 'inspectable',
    stated: months(36),
    opened: months(12),
    care: 30,
    says: 'Most finishes are said to keep 3 years, by the trade press; 12 months opened is common practice.',
  },
  'pre-catalysed-lacquer': {
    kind: 'fixed',
    stated: weeks(6),
    opened: weeks(6),
    care: 7,
    says: 'Said to keep from 6 weeks to a year, by the trade press; it looks normal when it is gone, so nothing extends the shortest.',
  },
  'shellac-mixed': {
    kind: 'inspectable',
    stated: months(6),
    opened: months(6),
    care: 14,
    colourShows: true,
    says: 'Said to keep 6 to 12 months once mixed, by the trade press and trade forums; 6 is the cautious end. Test a drop on glass.',
  },
  'shellac-dry': {
    kind: 'inspectable',
    stated: months(24),
    opened: months(24),
    care: 30,
    colourShows: true,
    says: 'Two years dry and cool (common practice). Flakes that no longer dissolve have gone.',
  },
  pva: {
    kind: 'inspectable',
    stated: months(12),
    opened: months(12),
    care: 30,
    storage: { leastC: 5, mostC: 30 },
    says: 'One to two years are stated and more is claimed, by the trade press; 12 months is the cautious end. It stands a few freezes.',
  },
  'hide-glue': {
    kind: 'inspectable',
    stated: months(12),
    opened: months(6),
    care: 30,
    says: '12 months, by the trade press; 6 months opened is common practice. Glue two sticks and break them to test.',
  },
  'polyurethane-glue': {
    kind: 'inspectable',
    stated: months(9),
    opened: months(6),
    care: 14,
    says: '9 to 12 months, by technical bulletins; 9 is the cautious end, 6 opened is common practice.',
  },
  cyanoacrylate: {
    kind: 'inspectable',
    stated: months(8),
    opened: months(1),
    care: 7,
    says: '8 to 12 months sealed and 1 to 6 opened, by technical bulletins and the trade press; the cautious ends. Keep it cool until opened.',
  },
  'contact-cement': { kind: 'inspectable', care: 30, says: FOLLOW },
  abrasive: { kind: 'keeps', care: 0, says: 'Keeps when dry and flat (common practice).' },
  hardware: { kind: 'keeps', care: 0, says: 'Keeps (common practice).' },
  other: { kind: 'inspectable', care: 30, says: FOLLOW },
};

/**
 * The policy a new product of this kind starts from. Every life in it is a house default: cautious, editable, and never
 * above what the container says. Where makers disagree it takes the cautious end of the range, and `says` names the kind of
 * source; a figure without one is marked common practice. `defaultPolicy('cyanoacrylate')` keeps 8 months, 1 once opened.
 */
export function defaultPolicy(kind: MaterialKind): DefaultPolicy {
  const row = ROWS[kind];
  return {
    kind: row.kind,
    statedLife: row.stated,
    statedLifeBasis: 'house-default',
    openedLife: row.opened,
    openedLifeBasis: 'house-default',
    careWindowDays: row.care,
    freezingRuins: row.freezingRuins ?? false,
    storage: row.storage,
    colourShows: row.colourShows ?? false,
    says: row.says,
    suggestedInspectionLife: row.kind === 'inspectable' && row.stated ? inspectionLife(row.stated) : undefined,
  };
}
