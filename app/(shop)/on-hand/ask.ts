import { PIECE_FORMS, type PieceForm } from '@/shared/wood/piece';

/** What wood is narrowed to, as it is typed. */
export type TypedFilter = { form: PieceForm | ''; species: string; free: boolean; thick: string; long: string };

/** What On hand shows, as its address keeps it: `?q=deep pour&show=wood&used=yes&form=board&thick=2 in`. */
export type Ask = { query: string; show: 'materials' | 'wood'; withEmpty: boolean; wood?: TypedFilter | undefined };

type Name = 'q' | 'show' | 'used' | keyof TypedFilter;
type Given = Partial<Record<Name, string | string[] | null>>;

export const NO_FILTER: TypedFilter = { form: '', species: '', free: false, thick: '', long: '' };

const MOST_LETTERS = 100;
const first = (value: string | string[] | null | undefined) => (Array.isArray(value) ? value[0] : value) ?? '';

/** Reads the address; what does not read is as if it were not there. */
export function readAsk({ q, show, used, ...given }: Given): Ask {
  return {
    query: first(q).slice(0, MOST_LETTERS),
    show: first(show) === 'wood' ? 'wood' : 'materials',
    withEmpty: first(used) === 'yes',
    wood: readFilter(given),
  };
}

/** Undefined where the wood is not narrowed to anything. */
function readFilter({ form, species, free, thick, long }: Given): TypedFilter | undefined {
  const filter: TypedFilter = {
    form: PIECE_FORMS.find((each) => each === first(form)) ?? '',
    species: first(species).slice(0, MOST_LETTERS),
    free: first(free) === 'yes',
    thick: first(thick).slice(0, MOST_LETTERS),
    long: first(long).slice(0, MOST_LETTERS),
  };
  return isFilter(filter) ? filter : undefined;
}

export const isFilter = ({ form, species, free, thick, long }: TypedFilter) =>
  form !== '' || species !== '' || free || thick.trim() !== '' || long.trim() !== '';

/** The address of what is shown; plain `/on-hand` for the first sight of it. */
export function hrefOfAsk({ query, show, withEmpty, wood }: Ask): string {
  const params = new URLSearchParams();
  if (query.trim() !== '') params.set('q', query.trim());
  if (show === 'wood') params.set('show', show);
  if (withEmpty) params.set('used', 'yes');
  if (wood && show === 'wood') {
    for (const name of ['form', 'species', 'thick', 'long'] as const) {
      if (wood[name].trim() !== '') params.set(name, wood[name].trim());
    }
    if (wood.free) params.set('free', 'yes');
  }
  const text = params.toString();
  return text === '' ? '/on-hand' : `/on-hand?${text}`;
}
