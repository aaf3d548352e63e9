import { riverOfPieces } from '@/app/_server/fits/river-of-pieces';
import type { Search } from '@/app/_server/fits/search-task';
import { type KeptRiver, keptRiver } from '@/app/_server/pours/kept-river';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import type { GivenParams } from '@/app/(shop)/on-hand/fits/question';
import type { QuestionTyping } from '@/app/(shop)/on-hand/fits/read-typed';
import { readRiverQuestion, riverQuestion } from '@/app/(shop)/on-hand/fits/river-question';
import { err, ok, type Result } from '@/shared/result/result';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';

/** What an address asks to be poured: the river between the pieces it names, or what is to be filled on them. */
export type AskedPour = {
  readonly labels: readonly OwnLabelCode[];
  /** The fills that are meant, as the plan names them; undefined for all of those pieces, or where none is named. */
  readonly wanted: readonly string[] | undefined;
  /** The question the river was found by; empty where it is not about one. */
  readonly asked: string;
};

/** So many pieces make a top: no address names more. */
const MOST_NAMED = 2;

export function readAskedPour(params: GivenParams): AskedPour {
  const words = (name: string) => [params[name] ?? []].flat().join(' ').split(/\s+/).filter(Boolean);
  const read = words('pieces').flatMap((text) => {
    const label = parseOwnLabel(text);
    return label.ok ? [label.value.code] : [];
  });
  const labels = [...new Set(read)].slice(0, MOST_NAMED);
  const [first] = labels;
  const marks = words('marks').map((nr) => `${first}/mark/${nr}`);
  return {
    labels,
    wanted: first && marks.length > 0 ? marks : undefined,
    asked: labels.length > 0 ? riverQuestion(params) : '',
  };
}

/** The river an address asks for, as its slabs are now; in words where there is none. Undefined where it asks for none. */
export async function riverOfAddress(
  book: Parameters<typeof riverOfPieces>[0],
  { labels, asked }: Pick<AskedPour, 'labels' | 'asked'>,
  typing: QuestionTyping,
  search?: Search,
): Promise<Result<KeptRiver, { what: string; todo: string }> | undefined> {
  if (asked === '') return undefined;
  const question = readRiverQuestion(asked, typing);
  if (!question) {
    return err({
      what: 'What the river was searched by does not read.',
      todo: 'Search for it again, then plan its pour from there.',
    });
  }
  const found = await riverOfPieces(book, { labels, ...question }, search);
  if (found.ok) return ok(keptRiver(found.value, { asked, searchedOn: typing.today }));
  const { code, label } = found.error;
  return err(sayRefusal({ code, facts: { label, other: (code === 'river-gone' && labels[1]) || null } }));
}
