import type { FitAsk } from '@/app/_server/fits/what-fits';
import { readTyped } from '@/app/(shop)/on-hand/fits/read-typed';
import {
  firstQuestion,
  type QuestionProblems,
  type ShapeKind,
  type TypedQuestion,
} from '@/app/(shop)/on-hand/fits/typed-question';
import type { Result } from '@/shared/result/result';
import type { UnitSystem } from '@/shared/units/unit-system';

export type Question = {
  readonly typed: TypedQuestion;
  /** Whether anything was asked yet. */
  readonly asked: boolean;
  readonly read: Result<FitAsk, QuestionProblems>;
};

export type GivenParams = Record<string, string | string[] | undefined>;

const SHAPES: readonly ShapeKind[] = ['rectangle', 'round', 'oval', 'superellipse'];
const MOST_LETTERS = 40;

/**
 * Reads the address. Everything typed is kept as it was typed; every field that does not read is named at once with what
 * to type instead. A field that its shape does not have is not read. An address without a length asks nothing yet.
 */
export function readQuestion(params: GivenParams, prefer: UnitSystem): Question {
  const first = firstQuestion(prefer);
  const text = (name: Exclude<keyof TypedQuestion, 'shape' | 'free'>) => {
    const given = params[name];
    const one = Array.isArray(given) ? given[0] : given;
    return one === undefined ? first[name] : one.slice(0, name === 'species' ? 100 : MOST_LETTERS);
  };
  const typed: TypedQuestion = {
    shape: SHAPES.find((shape) => shape === params.shape) ?? first.shape,
    l: text('l'),
    w: text('w'),
    r: text('r'),
    n: text('n'),
    edge: text('edge'),
    trim: text('trim'),
    grain: text('grain'),
    thick: text('thick'),
    mc: text('mc'),
    species: text('species'),
    free: params.free === 'yes',
  };
  return { typed, asked: params.l !== undefined, read: readTyped(typed, prefer) };
}
