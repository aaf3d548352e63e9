/** One board foot, 144 cubic inches of 25.4 mm exactly, in cubic millimetres. */
export const BOARD_FOOT_MM3 = 144 * 25.4 ** 3;

const UNITS: Readonly<Record<string, number>> = {
  bf: BOARD_FOOT_MM3,
  'bd ft': BOARD_FOOT_MM3,
  'board feet': BOARD_FOOT_MM3,
  'board foot': BOARD_FOOT_MM3,
  'm³': 1e9,
  m3: 1e9,
  'ft³': 304.8 ** 3,
  ft3: 304.8 ** 3,
  'cu ft': 304.8 ** 3,
};
/** More than a lorry carries: a unit was mistaken. */
const MOST_MM3 = 50e9;

/** A volume of wood as sellers write it, to the cubic millimetre; undefined where it is none. `42.5 bf`, `0,1 m³`. */
export function readVolume(text: string): number | undefined {
  const read = /^(\d+(?:[.,]\d+)?)\s*(\D.*)$/.exec(text.trim().toLowerCase());
  const unit = UNITS[(read?.[2] ?? '').replace(/\.$/, '').trim()];
  if (!read || unit === undefined) return undefined;
  const volume = Math.round(Number((read[1] ?? '').replace(',', '.')) * unit);
  return volume > 0 && volume <= MOST_MM3 ? volume : undefined;
}
