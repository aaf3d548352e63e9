'use client';

import { useState } from 'react';
import { Fold } from '@/app/_ui/fold';
import { FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { KeepKey } from '@/app/(shop)/pieces/_ui/keep-key';
import { LengthField, typedLength } from '@/app/(shop)/pieces/_ui/length-field';
import { PassesFields, readPasses, usualPasses } from '@/app/(shop)/pieces/_ui/passes-fields';
import { useRemembered } from '@/app/(shop)/pieces/_ui/use-remembered';
import type { PartProps } from '@/app/(shop)/pieces/_ui/weight-part';
import { warpAction } from '@/app/(shop)/pieces/actions';
import { flatteningFigures, sayLeft } from '@/app/(shop)/pieces/flattening-figures';
import { workOutFlattening } from '@/app/(shop)/pieces/work-out-flattening';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLengthExact } from '@/shared/units/print-length-exact';

const NONE = nanometres(0);

/** The thickness left once a piece is flat, whole or cut to size first, from how far it leaves a straightedge. */
export function FlatteningPart({ piece, species, prefer }: PartProps) {
  const kept = (nm: Nanometres | null) => (nm === null ? '' : printLengthExact(nm, prefer));
  const warp = { cup: kept(piece.warp.cup), bow: kept(piece.warp.bow), twist: kept(piece.warp.twist) };
  const [typed, setTyped] = useState({
    thickness: printLengthExact(piece.size.thickness, prefer),
    ...warp,
    length: '',
    width: '',
  });
  const [passes, setPasses] = useRemembered('passes', usualPasses(prefer));
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
  const taken = readPasses(passes, prefer);
  const [length, width] = [typedLength(typed.length, prefer), typedLength(typed.width, prefer)];
  const isMeasured = [typed.cup, typed.bow, typed.twist].some((text) => text.trim() !== '');
  const isKept = (['cup', 'bow', 'twist'] as const).every((name) => typed[name].trim() === warp[name]);
  const isRead = cup !== undefined && bow !== undefined && twist !== undefined;
  const size = {
    length: piece.size.length,
    width: nanometres(Math.max(piece.size.start, piece.size.middle, piece.size.end)),
  };
  const flat =
    thickness !== undefined && isRead && taken && isMeasured && size.length > 0
      ? workOutFlattening({
          ...size,
          thickness,
          cup,
          bow,
          twist,
          passes: taken,
          ...(length && width && { cutTo: { length, width } }),
        })
      : undefined;
  return (
    <Fold
      title="Flattening"
      now={
        !isMeasured
          ? 'cup, bow and twist not measured'
          : flat
            ? `${sayLeft(flat.whole, prefer)} left of ${typed.thickness.trim()}`
            : undefined
      }
    >
      <div className={styles.part}>
        {isMeasured ? null : (
          <p>Lay a straightedge on it and measure how far it leaves it: what stays empty counts as nothing.</p>
        )}
        {flat ? (
          <p className={styles.headline}>
            {flat.whole.value.nothingLeft ? (
              'Nothing is left when it is flattened whole.'
            ) : (
              <>
                <span className={styles.whole}>{sayLeft(flat.whole, prefer)}</span> left when it is flattened whole.
              </>
            )}
            {flat.cutFirst ? (
              <>
                {' '}
                Cut to size first: <span className={styles.whole}>{sayLeft(flat.cutFirst, prefer)}</span>.
              </>
            ) : null}
          </p>
        ) : null}
        <div>
          {field('thickness', 'Rough thickness', 'Where it is thinnest.', false)}
          {field('cup', 'Cup', 'The gap under a straightedge across it.')}
          {field('bow', 'Bow', 'The gap under a straightedge along it.')}
          {field('twist', 'Twist', 'How high one corner stands with the other three down.')}
          {piece.label && isRead && !isKept ? (
            <KeepKey
              action={warpAction}
              input={{ label: piece.label, cup: typed.cup, bow: typed.bow, twist: typed.twist }}
              words="Keep cup, bow and twist in the book"
              done="In the book, with the piece."
            />
          ) : null}
          <PassesFields typed={passes} prefer={prefer} onChange={setPasses} />
          {field('length', 'Cut first to length')}
          {field('width', 'Cut first to width')}
        </div>
        {flat && thickness !== undefined ? (
          <FigureList figures={flatteningFigures(piece, species, thickness, flat, prefer)} prefer={prefer} />
        ) : null}
        <p className={styles.soft}>
          Cup, bow and twist are added, the most they can cost together. A cup falls with the square of the width it is
          cut to. Let it rest between the two flattenings: wood moves when its faces are taken.
        </p>
      </div>
    </Fold>
  );
}
