import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { Page } from '@/app/_ui/page';
import { SpeciesList } from '@/app/(shop)/species/_ui/species-list';
import { speciesRows, speciesSources } from '@/app/(shop)/species/species-rows';

export const metadata: Metadata = { title: 'Species' };

type Props = { searchParams: Promise<{ q?: string | string[] }> };

/** The handbook: every species with its published figures, each with its source. */
export default async function SpeciesPage({ searchParams }: Props) {
  const [{ head }, { q }] = await Promise.all([bookForPage(), searchParams]);
  const rows = speciesRows(head.dateOrder);
  const query = ((Array.isArray(q) ? q[0] : q) ?? '').slice(0, 100);
  return (
    <Page title="Species" context={`${rows.length} woods`} back={{ href: '/settings', words: 'Settings' }}>
      <SpeciesList key={query} rows={rows} sources={speciesSources(rows)} query={query} />
    </Page>
  );
}
