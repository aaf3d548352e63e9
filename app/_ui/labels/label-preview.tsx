'use client';

import { useState } from 'react';
import type { LabelChoice, LabelToPrint } from '@/app/_ui/labels/label-choice';
import { previewLink } from '@/app/_ui/labels/label-links';
import styles from '@/app/_ui/labels/labels.module.css';
import { LABEL_FORMATS } from '@/shared/labels/label-formats';

/** As many as help to judge the print; the rest follow the same pattern. */
const MOST_SHOWN = 6;

/** The labels as they will be printed, a slab with both its ends. */
export function LabelPreview({ labels, choice }: { labels: readonly LabelToPrint[]; choice: LabelChoice }) {
  const drawings = labels.flatMap((label): { label: LabelToPrint; end?: 1 | 2 }[] =>
    label.kind === 'slab' ? [1 as const, 2 as const].map((end) => ({ label, end })) : [{ label }],
  );
  const more = drawings.length - MOST_SHOWN;
  return (
    <div>
      <ul className={styles.drawings}>
        {drawings.slice(0, MOST_SHOWN).map(({ label, end }) => (
          <li key={`${label.code} ${end ?? ''}`}>
            <Drawing
              key={previewLink(label.code, choice, end)}
              source={previewLink(label.code, choice, end)}
              words={`Label ${label.code}, ${label.title}${end ? `, end ${end} of 2` : ''}`}
              choice={choice}
            />
          </li>
        ))}
      </ul>
      {more > 0 ? <p className={styles.soft}>And {more} more like these.</p> : null}
    </div>
  );
}

function Drawing({ source, words, choice }: { source: string; words: string; choice: LabelChoice }) {
  const [failed, setFailed] = useState(false);
  const { width, height } = LABEL_FORMATS[choice.format].label;
  if (failed) {
    return (
      <p role="alert" className={styles.failed}>
        {words}: the drawing did not arrive. Nothing is lost; check the connection and open this page again.
      </p>
    );
  }
  return (
    // biome-ignore lint/performance/noImgElement: a drawing made by our own server needs no image optimiser
    <img
      className={styles.drawing}
      src={source}
      alt={words}
      style={{ aspectRatio: `${width} / ${height}`, maxWidth: `min(100%, ${width * 1.5}mm)` }}
      onError={() => setFailed(true)}
    />
  );
}
