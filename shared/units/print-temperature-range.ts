import { printTemperature } from '@/shared/units/print-temperature';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';

/**
 * Two temperatures as one range with its unit said once, each printed as `printTemperature` prints it: Celsius to the
 * tenth, Fahrenheit to the nearest whole degree. Degrees Celsius come in as a label or a data sheet gives them.
 * `printTemperatureRange(50, 60, { prefer: 'imperial' })` is `122 to 140 °F`.
 */
export function printTemperatureRange(
  leastC: number,
  mostC: number,
  { prefer }: { readonly prefer: UnitSystem },
): string {
  const [least, most] = [leastC, mostC].map((degrees) =>
    printTemperature(tenthsCelsius(Math.round(degrees * 10)), { prefer }),
  );
  return `${least?.replace(/ °[CF]$/, '')} to ${most}`;
}
