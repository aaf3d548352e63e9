import type { TopShape } from '@/shared/fit/top-shape';
import type { UnitSystem } from '@/shared/units/unit-system';

export type ShapeKind = TopShape['kind'];

/** The question as it is typed and as its address keeps it: `?shape=oval&l=78&w=36`. */
export type TypedQuestion = {
  readonly shape: ShapeKind;
  readonly l: string;
  readonly w: string;
  /** Corner radius of a rectangle; exponent of a superellipse. */
  readonly r: string;
  readonly n: string;
  readonly edge: string;
  readonly trim: string;
  /** Degrees the grain may run off the length. */
  readonly grain: string;
  readonly thick: string;
  /** The most it may read, in per cent; empty asks for none. */
  readonly mc: string;
  readonly species: string;
  readonly free: boolean;
};

export type QuestionField = Exclude<keyof TypedQuestion, 'shape' | 'species' | 'free'>;
export type QuestionProblems = Partial<Record<QuestionField, string>>;

/** What stands in the form before anyone types. Edge and end allowances: common practice. */
export function firstQuestion(prefer: UnitSystem): TypedQuestion {
  const imperial = prefer === 'imperial';
  return {
    shape: 'rectangle',
    l: '',
    w: '',
    r: '',
    n: '2.5',
    edge: imperial ? '1/2' : '12',
    trim: imperial ? '2' : '50',
    grain: '5',
    thick: '',
    mc: '10',
    species: '',
    free: false,
  };
}
