'use server';

import { z } from 'zod';
import { act } from '@/app/_server/act';
import { layOutRags } from '@/app/_server/watch/lay-out-rags';

export async function layOutRagsAction(key: string, input: unknown) {
  return act(z.object({}), key, input, layOutRags);
}
