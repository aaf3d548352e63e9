import type { TraceRefusalCode } from '@/app/_server/refusal';

/** Refusals about faults, and about holding what a trace found, in words. */
export const TRACE_WORDS: Readonly<Record<TraceRefusalCode, () => { what: string; todo: string }>> = {
  'nothing-to-hold': () => ({
    what: 'Nothing of it is left free in the shop, and none of its lots.',
    todo: 'What is on hold already stays on hold. Tell the clients.',
  }),
  'nothing-to-release': () => ({
    what: 'Nothing is on hold by that press any more.',
    todo: 'What was released or held otherwise since stays as it is; its own page shows why.',
  }),
  'found-in-the-future': () => ({
    what: 'It cannot have been found on a day to come.',
    todo: 'Give today or an earlier day.',
  }),
  'fault-needs-words': () => ({
    what: 'What is wrong is not said yet.',
    todo: 'Choose what it is, or write it in a few words.',
  }),
  'fault-needs-a-thing': () => ({
    what: 'It does not say what it was found on.',
    todo: 'Open it from a job, a piece or a container.',
  }),
  'photo-needs-a-thing': () => ({
    what: 'A photo belongs to a piece or a container, and none is named.',
    todo: 'Choose the piece it shows, or leave the photo out.',
  }),
  'lift-of-another-job': () => ({
    what: 'That lift was poured for another job.',
    todo: 'Choose a lift of this job.',
  }),
  'fault-gone': () => ({
    what: 'That fault was taken back: its entry was reversed.',
    todo: 'Load the page again: it shows what stands.',
  }),
  'fault-settled-already': () => ({
    what: 'Somebody settled this fault already.',
    todo: 'The history says who and how. Reverse that first to settle it otherwise.',
  }),
};
