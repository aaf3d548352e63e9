import type { FitAsk } from '@/app/_server/fits/fit-ask';
import { type QuestionTyping, readTyped } from '@/app/(shop)/on-hand/fits/read-typed';
import {
  firstQuestion,
  type MakeKind,
  type QuestionField,
  type QuestionProblems,
  type ShapeKind,
  type TypedQuestion,
} from '@/app/(shop)/on-hand/fits/typed-question';
import type { BestBy } from '@/shared/fit/score-place';
import type { Result } from '@/shared/result/result';

export type Question = {
  readonly typed: TypedQuestion;
  /** Whether anything was asked yet. */
  readonly asked: boolean;
  readonly read: Result<FitAsk, QuestionProblems>;
};

export type GivenParams = Record<string, string | string[] | undefined>;

const SHAPES: readonly ShapeKind[] = ['rectangle', 'round', 'oval', 'superellipse'];
const MAKES: readonly MakeKind[] = ['one', 'pair', 'river'];
const BESTS: readonly BestBy[] = ['balanced', 'waste', 'offcut', 'figure'];
const MOST_LETTERS = 40;

/**
 * Reads the address. Everything typed is kept as it was typed; every field that does not read is named at once with what
 * to type instead. A field that its shape does not have is not read. An address without a length asks nothing yet.
 */
export function readQuestion(params: GivenParams, typing: QuestionTyping): Question {
  const first = firstQuestion(typing.prefer);
  const asked = params.l !== undefined;
  // A box that is not ticked sends nothing: an address that asks and has none says no.
  const ticked = (name: 'free' | 'fill' | 'heart') => (asked ? params[name] === 'yes' : first[name]);
  const text = (name: QuestionField | 'species') => {
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
    free: ticked('free'),
    make: MAKES.find((make) => make === params.make) ?? first.make,
    gap: text('gap'),
    back: text('back'),
    by: text('by'),
    weight: text('weight'),
    fill: ticked('fill'),
    heart: ticked('heart'),
    best: BESTS.find((best) => best === params.best) ?? first.best,
  };
  return { typed, asked, read: readTyped(typed, typing) };
}
