'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { recordSentFault } from '@/app/_server/faults/record-fault';
import { settleFault } from '@/app/_server/faults/settle-fault';
import { faultSchema, settleSchema } from '@/app/(shop)/faults/schema';

export async function faultAction(key: string, input: unknown) {
  return act(async () => faultSchema(await typingContext()), key, input, recordSentFault);
}

export async function settleAction(key: string, input: unknown) {
  return act(settleSchema, key, input, settleFault);
}
