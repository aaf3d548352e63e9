/** The Appendices of the Convention as they are written down here. From memory: the list itself was not opened. */
export const CITES_AS_OF = '2024-11-25';

type CitesListing = {
  /** A genus, or a genus and species, as in the Appendices. */
  readonly taxon: string;
  readonly appendix: 'I' | 'II' | 'III';
  /** Which trees or places the listing is limited to. */
  readonly limit?: string;
};

export type CitesNote = {
  readonly listings: readonly CitesListing[];
  readonly asOf: typeof CITES_AS_OF;
  readonly standing: 'memory';
  readonly defer: string;
};

const listing = (taxon: string, appendix: CitesListing['appendix'], limit?: string): CitesListing =>
  limit === undefined ? { taxon, appendix } : { taxon, appendix, limit };

/** Trees a furniture maker may meet. A species stands before its genus. */
const LISTINGS: readonly CitesListing[] = [
  listing('Dalbergia nigra', 'I'),
  listing('Dalbergia', 'II', 'all other species; small finished goods may be exempt'),
  listing('Araucaria araucana', 'I'),
  listing('Fitzroya cupressoides', 'I'),
  listing('Afzelia', 'II', 'populations of Africa'),
  listing('Aniba rosaeodora', 'II'),
  listing('Cedrela', 'II', 'populations of the Neotropics'),
  listing('Diospyros', 'II', 'populations of Madagascar'),
  listing('Dipteryx', 'II'),
  listing('Fraxinus mandshurica', 'III', 'Russian Federation'),
  listing('Gonystylus', 'II'),
  listing('Guaiacum', 'II'),
  listing('Guibourtia demeusei', 'II'),
  listing('Guibourtia pellegriniana', 'II'),
  listing('Guibourtia tessmannii', 'II'),
  listing('Handroanthus', 'II'),
  listing('Khaya', 'II', 'populations of Africa'),
  listing('Paubrasilia echinata', 'II'),
  listing('Pericopsis elata', 'II'),
  listing('Pinus koraiensis', 'III', 'Russian Federation'),
  listing('Pterocarpus', 'II', 'populations of Africa'),
  listing('Quercus mongolica', 'III', 'Russian Federation'),
  listing('Roseodendron', 'II'),
  listing('Swietenia macrophylla', 'II', 'populations of the Neotropics'),
  listing('Swietenia', 'II', 'mahagoni and humilis'),
  listing('Tabebuia', 'II'),
];

/**
 * What the Convention on International Trade in Endangered Species lists for a botanical name, or `null` when nothing is
 * known here. A species named in the list stands for itself, and its genus is left out; a genus written `spp.` gathers
 * its genus and every species of it. The list is dated and from memory, so the note always defers to the authority, and
 * `null` is no clearance. `citesNote('Dalbergia nigra')` is Appendix I.
 */
export function citesNote(botanical: string): CitesNote | null {
  const [genus = '', species = ''] = botanical.trim().split(/\s+/);
  const whole = /^spp?\.?$/.test(species) || species === '';
  const exact = LISTINGS.filter(({ taxon }) => taxon === `${genus} ${species}`);
  const listings = whole
    ? LISTINGS.filter(({ taxon }) => taxon === genus || taxon.startsWith(`${genus} `))
    : exact.length
      ? exact
      : LISTINGS.filter(({ taxon }) => taxon === genus);
  if (listings.length === 0) return null;
  return {
    listings,
    asOf: CITES_AS_OF,
    standing: 'memory',
    defer: 'Ask your CITES authority and read the Appendices in force before you buy, sell or ship it across a border.',
  };
}
