'use client';

import { LengthField, typedLength } from '@/app/(shop)/pieces/_ui/length-field';
import { nanometres } from '@/shared/units/nanometres';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';
import { type FlatteningPass, USUAL_PASSES } from '@/shared/wood/flatten-piece';

/** What each pass takes off each face, as typed. */
export type TypedPasses = { rough: string; rested: string; sanded: string };

const NAMES = ['rough', 'rested', 'sanded'] as const;
const WORDS: Record<keyof TypedPasses, string> = {
  rough: 'Flattening rough takes, each face',
  rested: 'Again after a rest, each face',
  sanded: 'Sanding, each face',
};

/** The usual passes as they would be typed. */
export function usualPasses(prefer: UnitSystem): TypedPasses {
  const [rough = '', rested = '', sanded = ''] = USUAL_PASSES.map(({ takes }) => printLengthExact(takes, prefer));
  return { rough, rested, sanded };
}

/** The passes as they read, two faces each; an empty one is left out. Undefined while one does not read. */
export function readPasses(typed: TypedPasses, prefer: UnitSystem): readonly FlatteningPass[] | undefined {
  const passes: FlatteningPass[] = [];
  for (const name of NAMES) {
    const takes = typedLength(typed[name], prefer, nanometres(0));
    if (takes === undefined) return undefined;
    passes.push({ takes, faces: 2 });
  }
  return passes;
}

/** What planing and sanding take, pass by pass. */
export function PassesFields({
  typed,
  prefer,
  onChange,
}: {
  typed: TypedPasses;
  prefer: UnitSystem;
  onChange: (typed: TypedPasses) => void;
}) {
  return NAMES.map((name) => (
    <LengthField
      key={name}
      label={WORDS[name]}
      optional
      prefer={prefer}
      value={typed[name]}
      onChange={(text) => onChange({ ...typed, [name]: text })}
    />
  ));
}
