import type { FormulaId } from '@/shared/wood/formulas';

/** What a number was made of, so that a screen can open it: the formula's id and every input with its unit in its name. */
export type How = { readonly formula: FormulaId; readonly inputs: Readonly<Record<string, number | string>> };

/** A number or figure with what it was made of. The formula and its source are `WOOD_FORMULAS[how.formula]`. */
export type Explained<T> = { readonly value: T; readonly how: How };

/** Puts a value beside what it was made of. `explained(448, 'density', { G: 0.4, mc: 12 })`. */
export function explained<T>(value: T, formula: FormulaId, inputs: How['inputs']): Explained<T> {
  return { value, how: { formula, inputs } };
}
