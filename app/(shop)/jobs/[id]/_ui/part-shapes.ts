/** The shapes a top can have, as a form offers them. */
export const SHAPES = [
  { value: 'rectangle', label: 'Rectangle' },
  { value: 'round', label: 'Round' },
  { value: 'oval', label: 'Oval' },
  { value: 'superellipse', label: 'Squarer oval' },
];
