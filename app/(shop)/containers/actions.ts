'use server';

import { z } from 'zod';
import { act } from '@/app/_server/act';
import { theBook } from '@/app/_server/book/the-book';
import { typingContext } from '@/app/_server/book/typing-context';
import { containerPage } from '@/app/_server/stock/container-page';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { openContainer } from '@/app/_server/stock/open-container';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { recordTreatment } from '@/app/_server/treatments/record-treatment';
import { conditionSchema, openSchema, treatSchema, weighSchema } from '@/app/(shop)/containers/schema';

export async function openAction(key: string, input: unknown) {
  return act(async () => openSchema(await typingContext()), key, input, openContainer);
}

export async function conditionAction(key: string, input: unknown) {
  return act(conditionSchema, key, input, noteCondition);
}

export async function weighAction(key: string, input: unknown) {
  return act(() => weighSchemaFor(input), key, input, weighContainer);
}

async function weighSchemaFor(input: unknown) {
  const asked = z.object({ label: z.string() }).safeParse(input);
  const page = asked.success ? await containerPage(await theBook(), asked.data.label) : undefined;
  // Of a container that is not in the book nothing is known; the command refuses it in its own words.
  const thing = { unit: page?.line.unit ?? ('mg' as const), densityGramsPerLitre: page?.densityGramsPerLitre ?? null };
  return weighSchema(await typingContext(), thing);
}

export async function treatAction(key: string, input: unknown) {
  return act(async () => treatSchema(await typingContext()), key, input, recordTreatment);
}
