import { sayCites } from '@/app/(shop)/pieces/say-cites';
import { saySource } from '@/app/(shop)/pieces/say-how';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { ALL_SPECIES } from '@/shared/wood/all-species';
import { citesNote } from '@/shared/wood/cites-note';
import { plainName } from '@/shared/wood/plain-name';
import type { WoodSourceId } from '@/shared/wood/sources';
import type { Figure, Species } from '@/shared/wood/species';

type FigureRow = { term: string; value: string | null; source: WoodSourceId | null };

/** One species as its list shows it; what it is searched by is plain: lower case, no accents. */
export type SpeciesRow = {
  id: string;
  name: string;
  botanical: string;
  also: string;
  kind: 'hardwood' | 'softwood';
  searched: string;
  short: string;
  figures: FigureRow[];
  cites: string | null;
};

const FIGURES = [
  ['Specific gravity, green', 'gravityGreen', ''],
  ['Specific gravity at 12 % MC', 'gravity12', ''],
  ['Shrinkage, radial', 'shrinkRadial', ' %'],
  ['Shrinkage, tangential', 'shrinkTangential', ' %'],
  ['Shrinkage, volumetric', 'shrinkVolume', ' %'],
  ['Movement, radial, per % MC', 'moveRadial', ''],
  ['Movement, tangential, per % MC', 'moveTangential', ''],
] as const satisfies readonly (readonly [string, keyof Species, string])[];

/** Every species of the handbook with its figures and the source of each; what is unknown is null. */
export function speciesRows(order: DateOrder): SpeciesRow[] {
  return ALL_SPECIES.map((species) => {
    const { id, name, botanical, aliases, kind } = species;
    const note = citesNote(botanical);
    return {
      id,
      name,
      botanical,
      also: aliases.join(', '),
      kind,
      searched: ` ${plainName([name, botanical, ...aliases, kind].join(' '))}`,
      short: sayShort(species),
      figures: FIGURES.map(([term, figure, unit]) => ({
        term,
        value: say(species[figure], unit),
        source: species[figure]?.source ?? null,
      })),
      cites: note && sayCites(note, order),
    };
  });
}

/** The sources that the figures name, each as a sentence. */
export function speciesSources(rows: readonly SpeciesRow[]): Partial<Record<WoodSourceId, string>> {
  const named = new Set(rows.flatMap((row) => row.figures.flatMap(({ source }) => source ?? [])));
  return Object.fromEntries([...named].map((id) => [id, saySource(id)]));
}

const say = (figure: Figure, unit: string) => (figure ? `${figure.value}${unit}` : null);

function sayShort({ gravity12, shrinkRadial, shrinkTangential }: Species): string {
  const parts = [
    gravity12 ? `${gravity12.value} at 12 %` : 'gravity unknown',
    shrinkRadial && shrinkTangential
      ? `shrinks ${shrinkRadial.value} % radial, ${shrinkTangential.value} % tangential`
      : 'shrinkage unknown',
  ];
  return parts.join(' · ');
}
