'use client';

import { useState } from 'react';
import { sealOfBanks } from '@/app/(shop)/jobs/[id]/pours/seal-of-banks';
import type { TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import { parseLength } from '@/shared/units/parse-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** Keeps the bare wood of a river at both banks times the depth, until somebody types another area. */
export function useSealOfBanks(start: TypedPlan, banks: readonly [number, number] | undefined, units: UnitSystem) {
  const areaAt = (depth: string): string | undefined => {
    const read = parseLength(depth, { prefer: units });
    return banks && read.ok ? sealOfBanks(banks, read.value, units) : undefined;
  };
  const [isOwn, setOwn] = useState(start.from !== 'river' || start.sealArea !== areaAt(start.riverDepth));
  return {
    isOwn,
    typedOver: () => setOwn(true),
    /** What becomes of the area with a change of what is filled: of another space than a river it is not known. */
    after: (now: TypedPlan, change: Partial<TypedPlan>): Partial<TypedPlan> => {
      const next = { ...now, ...change };
      if (isOwn || (next.from === now.from && next.riverDepth === now.riverDepth)) return {};
      if (next.from !== 'river') return { sealArea: '' };
      const area = areaAt(next.riverDepth);
      return area === undefined ? {} : { sealArea: area };
    },
  };
}
