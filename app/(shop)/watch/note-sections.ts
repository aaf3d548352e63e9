import type { NoteList } from '@/app/_server/watch/watch-note';

type NoteSection = { list: NoteList; title: string; one: string; many: string };

/** The parts of Watch that are no list of containers, and what they count. */
export const NOTE_SECTIONS: Readonly<Record<NoteList, NoteSection>> = {
  rags: { list: 'rags', title: 'Rags to lay out', one: 'finish', many: 'finishes' },
  bench: { list: 'bench', title: 'At the bench', one: 'step', many: 'steps' },
  pairs: { list: 'pairs', title: 'To test again together', one: 'pair of lots', many: 'pairs of lots' },
  planned: { list: 'planned', title: 'Expires before its planned use', one: 'line', many: 'lines' },
  due: { list: 'due', title: 'Due before it is ready', one: 'job', many: 'jobs' },
  samples: { list: 'samples', title: 'Samples to look at', one: 'sample', many: 'samples' },
  readings: { list: 'readings', title: 'Moisture to read', one: 'line', many: 'lines' },
  idle: { list: 'idle', title: 'Reserved, and not moving', one: 'thing', many: 'things' },
};
