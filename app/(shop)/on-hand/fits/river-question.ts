import { type GivenParams, readQuestion } from '@/app/(shop)/on-hand/fits/question';
import type { QuestionTyping } from '@/app/(shop)/on-hand/fits/read-typed';
import type { TypedQuestion } from '@/app/(shop)/on-hand/fits/typed-question';
import type { FitRequest } from '@/shared/fit/fit-request';
import type { RiverRequest } from '@/shared/fit/fit-river';

/** What of a question decides where a river runs between two slabs that are named: not which others were looked at. */
const DECIDES: readonly (keyof TypedQuestion)[] = [
  'make',
  'shape',
  'l',
  'w',
  'r',
  'n',
  'thick',
  'gap',
  'back',
  'edge',
  'trim',
  'grain',
  'fill',
  'heart',
];

/** The part of an address that a river was found by, as an address of its own; empty where it asks for no river. */
export function riverQuestion(params: GivenParams): string {
  if (params.make !== 'river') return '';
  const kept = new URLSearchParams();
  for (const name of DECIDES) {
    const [value] = [params[name] ?? []].flat();
    if (value !== undefined) kept.set(name, value.slice(0, 40));
  }
  return kept.toString();
}

/** Reads it again; undefined where it asks for no river, or does not read. */
export function readRiverQuestion(
  asked: string,
  typing: QuestionTyping,
): { readonly request: FitRequest; readonly river: RiverRequest } | undefined {
  const { read } = readQuestion(Object.fromEntries(new URLSearchParams(asked)), typing);
  if (!read.ok || read.value.make.of !== 'river') return undefined;
  return { request: read.value.request, river: read.value.make.river };
}
