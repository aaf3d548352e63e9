import { err, ok, type Result } from '@/shared/result/result';
import type { AiEntry } from '@/shared/scan-codes/ai-entry';
import type { AiFaultCode } from '@/shared/scan-codes/ai-fault';
import { checkAiValue } from '@/shared/scan-codes/check-ai-value';

/** One element of a GS1 message. `at` is where its AI begins in the text it was read from. */
export type Gs1Element = {
  readonly ai: string;
  readonly value: string;
  readonly title: string;
  readonly at: number;
};

/** Why a text is not the GS1 message it looks like; `at` is an index of that text. */
export type Gs1Fault = {
  readonly code:
    | AiFaultCode
    | 'empty-message'
    | 'unknown-ai'
    | 'repeated-differently'
    | 'no-such-day'
    | 'bracket-expected'
    | 'bracket-not-closed'
    | 'trailing-slash'
    | 'bad-uri-character'
    | 'qualifier-order'
    | 'belongs-in-path'
    | 'not-an-attribute'
    | 'repeated'
    | 'null-character';
  readonly at: number;
  readonly ai?: string;
  readonly title?: string;
  readonly expected?: string;
};

/** Elements in order of appearance; the same AI twice is kept once, and refused where the values differ. */
export class Gs1ElementList {
  private readonly byAi = new Map<string, Gs1Element>();

  /** Adds one element. `valueAt` maps an index of the value to an index of the text. */
  add(entry: AiEntry, value: string, at: number, valueAt: (index: number) => number): Result<undefined, Gs1Fault> {
    const { ai, title } = entry;
    const fault = checkAiValue(entry, value);
    if (fault) return err({ ...fault, at: valueAt(fault.at), ai, title });
    const earlier = this.byAi.get(ai);
    if (earlier && earlier.value !== value) return err({ code: 'repeated-differently', at, ai, title });
    if (!earlier) this.byAi.set(ai, { ai, value, title, at });
    return ok(undefined);
  }

  has(ai: string): boolean {
    return this.byAi.has(ai);
  }

  all(): readonly Gs1Element[] {
    return [...this.byAi.values()];
  }
}
