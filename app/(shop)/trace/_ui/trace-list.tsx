import Link from 'next/link';
import { Code } from '@/app/_ui/code';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/trace/_ui/trace.module.css';
import type { TraceNote } from '@/app/(shop)/trace/say-bearing';
import { KIND_WORDS, type SaidNode } from '@/app/(shop)/trace/say-node';
import { TRACE_KINDS, type TraceKey } from '@/shared/trace/trace-graph';

export interface TraceListProps {
  nodes: readonly SaidNode[];
  /** What tests and treatments say of a thing, newest first. */
  notes: ReadonlyMap<TraceKey, readonly TraceNote[]>;
}

/** The things of a trace, kind by kind: the same as the picture, to be read down, with what was tried and done. */
export function TraceList({ nodes, notes }: TraceListProps) {
  return TRACE_KINDS.map((kind) => {
    const some = nodes.filter((node) => node.kind === kind);
    return some.length === 0 ? null : (
      <Section key={kind} title={KIND_WORDS[kind].many} aside={some.length > 1 ? `${some.length} in all` : undefined}>
        <ul className={styles.list} aria-label={KIND_WORDS[kind].many}>
          {some.map((node) => (
            <li key={node.key} data-gone={node.isGone || undefined}>
              <span>
                <Link href={node.href} prefetch={false}>
                  {node.title}
                </Link>{' '}
                {node.code ? <Code>{node.code}</Code> : null}
              </span>
              <span className={styles.soft}>
                {[node.isStart ? 'traced from here' : '', node.state, node.where].filter(Boolean).join(', ')}
              </span>
              {notes.has(node.key) ? (
                <div className={styles.notes}>
                  {notes.get(node.key)?.map(({ id, words, isBad }) => (
                    <p key={id} data-bad={isBad || undefined}>
                      {words}
                    </p>
                  ))}
                </div>
              ) : null}
            </li>
          ))}
        </ul>
      </Section>
    );
  });
}
