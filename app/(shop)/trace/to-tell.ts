import type { TraceNode } from '@/app/_server/trace/name-things';
import { STAGE_WORDS } from '@/app/(shop)/jobs/_ui/say-job';

/** A job whose client is to be told. */
export type ToTell = {
  jobId: number;
  job: string;
  /** "Own piece" and the like where no client is named. */
  client: string;
  contact: string;
  stage: string;
  isDelivered: boolean;
};

/** The jobs that were reached: clients first, delivered ones before those still in the shop. */
export function toTell(nodes: readonly TraceNode[]): ToTell[] {
  const all = nodes.flatMap(({ id, title, client }) =>
    client && client.stage !== 'dropped'
      ? [
          {
            jobId: id,
            job: title,
            client: client.purpose === 'client' ? client.name || 'Client not named' : 'No client: our own piece',
            contact: client.purpose === 'client' ? client.contact : '',
            stage: STAGE_WORDS[client.stage],
            isDelivered: client.stage === 'delivered',
            isOwn: client.purpose !== 'client',
          },
        ]
      : [],
  );
  const rank = ({ isOwn, isDelivered }: (typeof all)[number]) => (isOwn ? 2 : 0) + (isDelivered ? 0 : 1);
  return all.sort((a, b) => rank(a) - rank(b) || a.jobId - b.jobId).map(({ isOwn: _, ...each }) => each);
}

/** The list as it is pasted into a letter or a message: one line a job. */
export const toCopy = (list: readonly ToTell[]): string =>
  list
    .map(({ client, contact, job, stage }) => [client, contact || 'no contact in the book', job, stage].join('; '))
    .join('\n');
