import { randomUUID } from 'node:crypto';
import { revalidatePath } from 'next/cache';
import type { z } from 'zod';
import { theBook } from '@/app/_server/book/the-book';
import type { Written } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import type { Who } from '@/app/_server/who/who';
import { whoIsWriting } from '@/app/_server/who/who-is-writing';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import type { OpenBook } from '@/prisma/open-book';
import { sayStoreTrouble, storeTroubleOf } from '@/prisma/store-trouble';
import type { Answer, Problem } from '@/shared/result/answer';
import type { Result } from '@/shared/result/result';

/** A write: who asks, under which key, and what. */
export type Command<I, A> = (
  book: OpenBook,
  by: { who: Who; key: string; now: Date },
  input: I,
) => Promise<Result<Written<A>, Refusal>>;

/**
 * Runs a command for a form: who writes, is the input well formed, do it, show it.
 * Expected refusals and bad input come back as words; anything else is logged with a reference and said plainly.
 */
export async function act<I, A>(
  schema: z.ZodType<I>,
  key: string,
  input: unknown,
  command: Command<I, A>,
): Promise<Answer<A>> {
  const parsed = schema.safeParse(input);
  if (!parsed.success) return { ok: false, problem: problemOfFields(parsed.error.issues) };
  if (!/^[\w-]{8,64}$/.test(key))
    return { ok: false, problem: problemOfFields([{ path: ['key'], message: 'The request had no key.' }]) };
  try {
    const result = await command(await theBook(), { who: await whoIsWriting(), key, now: new Date() }, parsed.data);
    if (!result.ok) return { ok: false, problem: sayRefusal(result.error) };
    revalidatePath('/', 'layout');
    return { ok: true, ...result.value };
  } catch (error) {
    return { ok: false, problem: problemOfError(error) };
  }
}

function problemOfFields(issues: readonly { path: PropertyKey[]; message: string }[]): Problem {
  const fields: Record<string, string> = {};
  for (const issue of issues) fields[issue.path.join('.')] ??= issue.message;
  return {
    code: 'form',
    what: Object.values(fields)[0] ?? 'Something in the form does not fit.',
    kept: 'What you entered is still here. Nothing was written.',
    todo: 'Put right what is marked and press again.',
    fields,
  };
}

function problemOfError(error: unknown): Problem {
  const reference = randomUUID().slice(0, 8);
  console.error(`[${reference}]`, error);
  const trouble = storeTroubleOf(error);
  return {
    code: trouble,
    what: trouble === 'unknown' ? 'Something went wrong that this program did not expect.' : sayStoreTrouble(error),
    kept: 'Nothing was written. What you entered is still here.',
    todo:
      trouble === 'unknown'
        ? `Press again; if it stays, the server's log has it under ${reference}.`
        : 'Then press again.',
  };
}
