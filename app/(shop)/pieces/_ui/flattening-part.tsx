'use client';

import { useState } from 'react';
import { Fold } from '@/app/_ui/fold';
import { type Figure, FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { LengthField, typedLength } from '@/app/(shop)/pieces/_ui/length-field';
import type { PartProps } from '@/app/(shop)/pieces/_ui/weight-part';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import { USUAL_ALLOWANCE, weighFlattened, workOutFlattening } from '@/app/(shop)/pieces/work-out-flattening';
import { DRY_ENOUGH } from '@/app/(shop)/pieces/work-out-weight';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { Explained } from '@/shared/wood/explained';
import type { Flattened } from '@/shared/wood/flatten-piece';

const NONE = nanometres(0);

/** The thickness left once a piece is flat, whole or cut to size first, from how far it leaves a straightedge. */
export function FlatteningPart({ piece, species, prefer }: PartProps) {
  const [typed, setTyped] = useState({
    thickness: printLengthExact(piece.size.thickness, prefer),
    cup: '',
    bow: '',
    twist: '',
    allowance: printLengthExact(USUAL_ALLOWANCE, prefer),
    length: '',
    width: '',
  });
  const field = (name: keyof typeof typed, label: string, hint?: string, optional = true) => (
    <LengthField
      label={label}
      hint={hint}
      optional={optional}
      prefer={prefer}
      value={typed[name]}
      onChange={(text) => setTyped((now) => ({ ...now, [name]: text }))}
    />
  );
  const read = (name: keyof typeof typed) => typedLength(typed[name], prefer, NONE);
  const [thickness, cup, bow, twist] = [read('thickness'), read('cup'), read('bow'), read('twist')];
  const allowance = typedLength(typed.allowance, prefer, NONE);
  const length = typedLength(typed.length, prefer);
  const width = typedLength(typed.width, prefer);
  const isMeasured = [typed.cup, typed.bow, typed.twist].some((text) => text.trim() !== '');
  const complete =
    thickness !== undefined &&
    cup !== undefined &&
    bow !== undefined &&
    twist !== undefined &&
    allowance !== undefined &&
    piece.size.length > 0;
  const size = {
    length: piece.size.length,
    width: nanometres(Math.max(piece.size.start, piece.size.middle, piece.size.end)),
  };
  const flat = complete
    ? workOutFlattening({
        ...size,
        thickness,
        cup,
        bow,
        twist,
        allowance,
        ...(length && width && { cutTo: { length, width } }),
      })
    : undefined;
  const say = ({ value }: Explained<Flattened>) =>
    value.nothingLeft ? 'nothing' : printLength(value.left, { prefer, denominator: 32 });
  const weighed = flat && thickness ? weighFlattened(piece, species, thickness, flat.whole.value.left) : undefined;
  const figures: Figure[] =
    flat && isMeasured
      ? [
          { term: 'Left, flattened whole', value: say(flat.whole), how: flat.whole.how },
          ...(flat.cutFirst
            ? [{ term: 'Left, cut to size first', value: say(flat.cutFirst), how: flat.cutFirst.how }]
            : []),
          ...(weighed?.ok && !flat.whole.value.nothingLeft
            ? [
                {
                  term: `Weighs flattened whole, at ${DRY_ENOUGH} %`,
                  value: sayMass(weighed.value.after.kilograms.value, prefer),
                  how: weighed.value.after.kilograms.how,
                },
              ]
            : []),
        ]
      : [];
  return (
    <Fold
      title="Flattening"
      now={
        !isMeasured
          ? 'cup, bow and twist not measured'
          : flat
            ? `${say(flat.whole)} left of ${typed.thickness.trim()}`
            : undefined
      }
    >
      <div className={styles.part}>
        {isMeasured ? null : (
          <p>Lay a straightedge on it and measure how far it leaves it: what stays empty counts as nothing.</p>
        )}
        {flat && isMeasured ? (
          <p className={styles.headline}>
            {flat.whole.value.nothingLeft ? (
              'Nothing is left when it is flattened whole.'
            ) : (
              <>
                <span className={styles.whole}>{say(flat.whole)}</span> left when it is flattened whole.
              </>
            )}
            {flat.cutFirst ? (
              <>
                {' '}
                Cut to size first: <span className={styles.whole}>{say(flat.cutFirst)}</span>.
              </>
            ) : null}
          </p>
        ) : null}
        <div>
          {field('thickness', 'Rough thickness', 'Where it is thinnest.', false)}
          {field('cup', 'Cup', 'The gap under a straightedge across it.')}
          {field('bow', 'Bow', 'The gap under a straightedge along it.')}
          {field('twist', 'Twist', 'How high one corner stands with the other three down.')}
          {field(
            'allowance',
            'Planing and sanding take, in all',
            'Both faces, rough, again after a rest, and sanding.',
          )}
          {field('length', 'Cut first to length')}
          {field('width', 'Cut first to width')}
        </div>
        <FigureList figures={figures} prefer={prefer} />
        <p className={styles.soft}>
          Cup, bow and twist are added, the most they can cost together. Let it rest between the two flattenings: wood
          moves when its faces are taken.
        </p>
      </div>
    </Fold>
  );
}
