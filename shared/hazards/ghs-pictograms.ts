/**
 * The nine hazard pictograms by their UN codes, with what each warns of.
 * Source: UN, Globally Harmonized System of Classification and Labelling of Chemicals (GHS), Annex 1 and section 1.4.10
 * (codes as used by UNECE; names from memory).
 */
export const GHS_PICTOGRAMS = {
  GHS01: 'Explosive',
  GHS02: 'Flammable',
  GHS03: 'Oxidising: feeds a fire',
  GHS04: 'Gas under pressure',
  GHS05: 'Corrosive: burns skin and eyes',
  GHS06: 'Poisonous',
  GHS07: 'Irritant; may sensitise skin',
  GHS08: 'Health hazard over time; may sensitise breathing',
  GHS09: 'Harmful to water life',
} as const;

export type GhsCode = keyof typeof GHS_PICTOGRAMS;

/** The codes as a list, for a form. */
export const GHS_CODES = Object.keys(GHS_PICTOGRAMS) as readonly GhsCode[];

/** Whether a text is one of the nine codes, for data from a form, a file or the store. */
export function isGhsCode(text: string): text is GhsCode {
  return Object.hasOwn(GHS_PICTOGRAMS, text);
}
