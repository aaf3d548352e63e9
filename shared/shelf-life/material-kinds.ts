/** The kinds of material a workshop keeps by date, with their plain names, in the order a list shows them. */
export const MATERIAL_KINDS = {
  'resin-a': 'Resin, part A',
  'resin-b': 'Hardener, part B',
  pigment: 'Pigment',
  'hardwax-oil': 'Hardwax oil',
  'two-part-oil': 'Two-part oil',
  'oil-finish': 'Oil finish',
  varnish: 'Varnish',
  waterborne: 'Waterborne finish',
  lacquer: 'Lacquer',
  'pre-catalysed-lacquer': 'Pre-catalysed lacquer',
  'shellac-mixed': 'Shellac, mixed',
  'shellac-dry': 'Shellac flakes',
  pva: 'PVA glue',
  'hide-glue': 'Hide glue, liquid',
  'polyurethane-glue': 'Polyurethane glue',
  cyanoacrylate: 'CA glue',
  'contact-cement': 'Contact cement',
  abrasive: 'Abrasive',
  hardware: 'Hardware',
  other: 'Other',
} as const;

export type MaterialKind = keyof typeof MATERIAL_KINDS;

/** The kinds as a list, for a form. */
export const MATERIAL_KIND_IDS = Object.keys(MATERIAL_KINDS) as readonly MaterialKind[];

/** Whether a text is a material kind, for data that comes from a form, a file or the store. */
export function isMaterialKind(text: string): text is MaterialKind {
  return Object.hasOwn(MATERIAL_KINDS, text);
}
