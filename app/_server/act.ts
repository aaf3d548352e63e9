import { revalidatePath } from 'next/cache';
import type { z } from 'zod';
import { theBook } from '@/app/_server/book/the-book';
import { digestOfRequest } from '@/app/_server/ledger/digest-of-request';
import type { Written } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import type { Who } from '@/app/_server/who/who';
import { whoIsWriting } from '@/app/_server/who/who-is-writing';
import { problemOfError } from '@/app/_server/words/problem-of-error';
import { problemOfRefusal } from '@/app/_server/words/problem-of-refusal';
import type { OpenBook } from '@/prisma/open-book';
import type { Answer, Problem } from '@/shared/result/answer';
import type { Result } from '@/shared/result/result';

/** A write: who asks, under which key, and what. `sent`: the digest of the request as a form sent it. */
export type Command<I, A> = (
  book: OpenBook,
  by: { who: Who; key: string; now: Date; sent?: string },
  input: I,
) => Promise<Result<Written<A>, Refusal>>;

/** How the input is to be read. Where that depends on the book it is a function, so that its trouble is said as trouble. */
type SchemaFor<I> = z.ZodType<I> | (() => z.ZodType<I> | Promise<z.ZodType<I>>);

/**
 * Runs a command for a form: who writes, is the input well formed, do it, show it.
 * Expected refusals and bad input come back as words; anything else is logged with a reference and said plainly.
 */
export async function act<I, A>(
  schema: SchemaFor<I>,
  key: string,
  input: unknown,
  command: Command<I, A>,
): Promise<Answer<A>> {
  try {
    const parsed = (typeof schema === 'function' ? await schema() : schema).safeParse(input);
    if (!parsed.success) return { ok: false, problem: problemOfFields(parsed.error.issues) };
    if (!/^[\w-]{8,64}$/.test(key))
      return { ok: false, problem: problemOfFields([{ path: ['key'], message: 'The request had no key.' }]) };
    const by = { who: await whoIsWriting(), key, now: new Date(), sent: await digestOfRequest(input) };
    const result = await command(await theBook(), by, parsed.data);
    if (!result.ok) return { ok: false, problem: await problemOfRefusal(result.error) };
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
