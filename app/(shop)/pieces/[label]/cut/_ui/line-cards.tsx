'use client';

import { Key } from '@/app/_ui/keys';
import styles from '@/app/(shop)/pieces/[label]/cut/_ui/cut.module.css';
import { LineFields, WAY_WORDS } from '@/app/(shop)/pieces/[label]/cut/_ui/line-fields';
import { isDrawn, type TypedLine } from '@/app/(shop)/pieces/[label]/cut/typed-cut';
import type { Point } from '@/shared/outline/point';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface LineCardsProps {
  lines: readonly TypedLine[];
  /** The one in hand: its fields are open. */
  at: number;
  /** A place in each piece there is before line `nr`. */
  before: (nr: number) => readonly Point[];
  /** By the name of the field: `lines.0.distance`. */
  problems: Readonly<Record<string, string | undefined>>;
  prefer: UnitSystem;
  onChange: (lines: readonly TypedLine[]) => void;
  onAt: (nr: number) => void;
}

/** The lines of a cut in their order, the one in hand open and the others in a word. */
export function LineCards({ lines, at, before, problems, prefer, onChange, onAt }: LineCardsProps) {
  return (
    <>
      {lines.map((line, nr) => {
        const title = `${nr + 1}. ${WAY_WORDS[line.way]}`;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: fields keep no state of their own.
          <div key={nr} className={styles.lineCard} data-open={nr === at || undefined}>
            <div className={styles.lineHead}>
              <h3>{nr === at ? title : `${title}${sayFar(line)}`}</h3>
              {nr === at ? null : (
                <Key variant="ghost" onClick={() => onAt(nr)} aria-label={`Change cut ${nr + 1}`}>
                  Change
                </Key>
              )}
              {lines.length > 1 ? (
                <Key
                  variant="ghost"
                  aria-label={`Take off cut ${nr + 1}`}
                  onClick={() => {
                    onChange(lines.filter((_, other) => other !== nr));
                    onAt(Math.max(0, at - (nr <= at ? 1 : 0)));
                  }}
                >
                  Take off
                </Key>
              ) : null}
            </div>
            {nr === at ? (
              <LineFields
                line={line}
                before={before(nr)}
                problems={{
                  distance: problems[`lines.${nr}.distance`] ?? problems[`lines.${nr}`],
                  points: problems[`lines.${nr}.points`] ?? problems[`lines.${nr}`],
                }}
                prefer={prefer}
                onChange={(next) => onChange(lines.map((each, other) => (other === nr ? next : each)))}
              />
            ) : null}
          </div>
        );
      })}
    </>
  );
}

const sayFar = (line: TypedLine) =>
  isDrawn(line)
    ? `, ${line.points.split('\n').filter((each) => each.trim() !== '').length} points`
    : line.distance.trim() === ''
      ? ''
      : ` at ${line.distance.trim()}`;
