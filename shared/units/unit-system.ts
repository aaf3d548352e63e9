/**
 * How the workshop likes to read its numbers. `imperial` means US customary: its gallon is the US liquid gallon of
 * 231 cubic inches. It never changes what is stored, only how a doubtful comma is read and how a number is shown.
 */
export type UnitSystem = 'metric' | 'imperial';
