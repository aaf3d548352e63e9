'use server';

import { z } from 'zod';
import { act } from '@/app/_server/act';
import { moveStock } from '@/app/_server/stock/move-stock';

const moveSchema = z.object({ labels: z.array(z.string().max(20)).min(1).max(500), placeLabel: z.string().max(20) });

export async function moveThings(key: string, input: unknown) {
  return act(moveSchema, key, input, moveStock);
}
