import type { BestBy } from '@/shared/fit/score-place';
import type { TopShape } from '@/shared/fit/top-shape';
import type { UnitSystem } from '@/shared/units/unit-system';

export type ShapeKind = TopShape['kind'];

/** In one piece, of two sisters opened like a book, or either side of a river of resin. */
export type MakeKind = 'one' | 'pair' | 'river';

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
  readonly make: MakeKind;
  /** The narrowest the river may be, and the least wood at the back of each piece. */
  readonly gap: string;
  readonly back: string;
  /** The day it has to be dry; empty asks for none. */
  readonly by: string;
  /** The most the finished top may weigh; empty asks for none. */
  readonly weight: string;
  /** Defects marked to be filled may be in the top; if not, they are kept out of it. */
  readonly fill: boolean;
  readonly heart: boolean;
  readonly best: BestBy;
};

export type QuestionField = Exclude<
  keyof TypedQuestion,
  'shape' | 'species' | 'free' | 'make' | 'fill' | 'heart' | 'best'
>;
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
    make: 'one',
    gap: imperial ? '3' : '80',
    back: imperial ? '2' : '50',
    by: '',
    weight: '',
    fill: true,
    heart: false,
    best: 'balanced',
  };
}
