import type { KeptRiver } from '@/app/_server/pours/kept-river';
import { sheetFacts } from '@/app/_server/pours/sheet-facts';
import type { PourPlan } from '@/shared/pour/plan-pour';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import type { PourVoid } from '@/shared/pour/void-volume';
import type { Nanometres } from '@/shared/units/nanometres';
import type { Microlitres, Milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

/** What a pour is planned from, apart from the sheet and the days. */
export type PourFigures = {
  space: PourVoid;
  sealArea: number;
  sealPerSquareMetre: Microlitres;
  leakagePercent: number;
  lossPerBatch: Microlitres;
  room: TenthsCelsius;
  bucket: Milligrams;
  minutesPerKilogram: number;
  step: Milligrams;
  lifts?: number | undefined;
};

/** A plan as the book keeps it: the form as it was typed, the sheet it was reckoned by, and what came out. */
export type KeptPlan = {
  typed: Record<string, string>;
  figures: PourFigures;
  sheet: ResinSheet;
  depth: Nanometres;
  plan: PourPlan;
  /** Why it goes beyond the sheet; empty where it does not. */
  reason: string;
  /** The river it fills, where it was searched for: the first of its fills. */
  river?: KeptRiver;
};

export function readPlan(text: string): KeptPlan {
  const kept = JSON.parse(text) as KeptPlan;
  return { ...kept, sheet: sheetFacts(kept.sheet) };
}
