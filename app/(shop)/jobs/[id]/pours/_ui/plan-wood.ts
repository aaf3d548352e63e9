import type { WoodChoice } from '@/app/_server/pours/void-choices';
import type { PlanWood } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-form';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** The pieces of a job as keys that put their volume in; all of them together where there are several. */
export function planWood(wood: readonly WoodChoice[]): PlanWood[] {
  const litres = (cubicMillimetres: number) => `${Math.round(cubicMillimetres / 1000) / 1000} L`;
  const each = wood.map(({ label, what, cubicMillimetres }) => ({
    label,
    words: `${printOwnLabel(label as OwnLabelCode)}, ${what}: ${litres(cubicMillimetres)}`,
    litres: litres(cubicMillimetres),
  }));
  if (wood.length < 2) return each;
  const all = litres(wood.reduce((sum, { cubicMillimetres }) => sum + cubicMillimetres, 0));
  return [{ label: 'all', words: `All ${wood.length} pieces: ${all}`, litres: all }, ...each];
}
