'use server';

import { act } from '@/app/_server/act';
import { addJob } from '@/app/_server/jobs/add-job';
import { changeJob } from '@/app/_server/jobs/change-job';
import { changeJobSchema, jobSchema } from '@/app/(shop)/jobs/schema';

export async function addJobAction(key: string, input: unknown) {
  return act(jobSchema, key, input, addJob);
}

export async function changeJobAction(key: string, input: unknown) {
  return act(changeJobSchema, key, input, changeJob);
}
