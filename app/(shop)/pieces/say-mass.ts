import type { UnitSystem } from '@/shared/units/unit-system';

/** The international pound, exactly (1959 agreement). */
const KILOGRAMS_IN_A_POUND = 0.45359237;

/** A computed mass in words: whole kilograms or pounds from ten on, tenths below. 73.92 is `74 kg`, and `163 lb` for imperial. */
export function sayMass(kilograms: number, prefer: UnitSystem): string {
  const [amount, unit] = prefer === 'metric' ? [kilograms, 'kg'] : [kilograms / KILOGRAMS_IN_A_POUND, 'lb'];
  return `${amount >= 9.95 ? Math.round(amount) : Math.round(amount * 10) / 10} ${unit}`;
}
