import Link from 'next/link';
import { Code } from '@/app/_ui/code';
import styles from '@/app/(shop)/trace/_ui/trace.module.css';
import { KIND_WORDS, type SaidNode } from '@/app/(shop)/trace/say-node';
import { layOutTrace } from '@/shared/trace/lay-out-trace';
import type { TraceEdge } from '@/shared/trace/trace-graph';

const NODE = { width: 198, height: 124 };
const STEP = { x: NODE.width + 42, y: NODE.height + 18 };

/** A trace drawn from left to right: what went in, where it went, what came of it. Everything in it is the way to its page. */
export function TracePicture({ nodes, edges }: { nodes: readonly SaidNode[]; edges: readonly TraceEdge[] }) {
  const layout = layOutTrace(
    nodes.map(({ key }) => key),
    edges,
  );
  const said = new Map(nodes.map((node) => [node.key, node]));
  const width = layout.columns * STEP.x - (STEP.x - NODE.width);
  const height = layout.rows * STEP.y - (STEP.y - NODE.height);
  const inOrder = [...layout.spots].sort((a, b) => a.column - b.column || a.row - b.row);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways is scrolled by the keys too.
    <section className={styles.scroll} aria-label="The picture" tabIndex={0}>
      <div className={styles.picture} style={{ width, height }}>
        <svg
          className={styles.lines}
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          aria-hidden="true"
          focusable="false"
        >
          {layout.lines.map(({ from, to, through }) => (
            <path key={`${from}>${to}`} d={lineOf(through)} />
          ))}
        </svg>
        {inOrder.map(({ key, column, row }) => {
          const node = said.get(key);
          return node ? (
            <Link
              key={key}
              href={node.href}
              prefetch={false}
              className={styles.node}
              data-kind={node.kind}
              data-start={node.isStart || undefined}
              data-left={node.isLeft || undefined}
              data-held={node.isHeld || undefined}
              data-gone={node.isGone || undefined}
              style={{ left: column * STEP.x, top: row * STEP.y, width: NODE.width, height: NODE.height }}
            >
              <span>
                {KIND_WORDS[node.kind].one}
                {node.kind === 'sample' && node.where ? `, ${node.where}` : ''}{' '}
                {node.code ? <Code>{node.code}</Code> : null}
              </span>
              <span className={styles.name}>{node.title}</span>
              <span className={styles.state}>{node.state}</span>
            </Link>
          ) : null;
        })}
      </div>
    </section>
  );
}

/** A line that leaves a thing to the right and comes to the next from the left, straight past what it has nothing to do with. */
function lineOf(through: readonly { column: number; row: number }[]): string {
  const middle = (row: number) => row * STEP.y + NODE.height / 2;
  const [first, ...rest] = through;
  if (!first) return '';
  let at = { x: first.column * STEP.x + NODE.width, y: middle(first.row) };
  let path = `M${at.x} ${at.y}`;
  for (const [nr, { column, row }] of rest.entries()) {
    const to = { x: column * STEP.x, y: middle(row) };
    const half = (at.x + to.x) / 2;
    path += `C${half} ${at.y} ${half} ${to.y} ${to.x} ${to.y}`;
    at = to;
    if (nr < rest.length - 1) {
      at = { x: to.x + NODE.width, y: to.y };
      path += `L${at.x} ${at.y}`;
    }
  }
  return path;
}
