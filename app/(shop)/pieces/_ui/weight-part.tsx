'use client';

import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { SelectField } from '@/app/_ui/field/select-field';
import { Fold } from '@/app/_ui/fold';
import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { type Figure, FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { NoFigure } from '@/app/(shop)/pieces/_ui/no-figure';
import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import { sayLifting } from '@/app/(shop)/pieces/say-lifting';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import { sayWeightTrouble } from '@/app/(shop)/pieces/say-trouble';
import { type BoardMeasure, soldAs, workOutBoardFeet } from '@/app/(shop)/pieces/work-out-board-feet';
import { DRY_ENOUGH, workOutWeight } from '@/app/(shop)/pieces/work-out-weight';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { sayDate } from '@/shared/calendar/say-date';
import type { UnitSystem } from '@/shared/units/unit-system';
import { SLAB_LIFT } from '@/shared/wood/lifting-caution';
import { QUARTER_THICKNESSES } from '@/shared/wood/quarter-thickness';
import { recommendedWeight } from '@/shared/wood/recommended-weight';
import type { Species } from '@/shared/wood/species';

export interface PartProps {
  piece: FiguredPiece;
  species: Species | null;
  prefer: UnitSystem;
}

const PEOPLE = ['1', '2', '3', '4'];

/** What a piece weighs, who may lift it, and its board measure. */
export function WeightPart({ piece, species, prefer, today }: PartProps & { today: CalendarDate }) {
  const [people, setPeople] = useState('2');
  const [quarters, setQuarters] = useState(String(soldAs(piece)));
  const weight = workOutWeight(piece, species, Number(people));
  const measure = workOutBoardFeet(piece, Number(quarters));
  const said = weight.ok ? sayLifting(weight.value.lifting.value, Number(people), prefer) : undefined;
  const mass = weight.ok ? sayMass(weight.value.now.value, prefer) : undefined;
  return (
    <Fold
      title="Weight"
      now={mass ? `about ${mass}${weight.ok && !weight.value.readOn ? ' if it is wet' : ''}` : 'not known'}
    >
      <div className={styles.part}>
        {weight.ok && said ? (
          <>
            <p className={styles.headline}>
              About {mass}{' '}
              {weight.value.readOn
                ? `at ${weight.value.mc} %, as read on ${sayDate(weight.value.readOn, { today })}`
                : 'or more, for it was never read'}
              ; {sayMass(weight.value.dry.value, prefer)} at {DRY_ENOUGH} %.
            </p>
            {weight.value.readOn ? null : (
              <p className={styles.soft}>
                Reckoned at {weight.value.mc} %, where wood is full of water and has not begun to shrink. Green wood can
                be heavier still: read it.
              </p>
            )}
            <ChoiceChips
              label="How many lift it?"
              options={PEOPLE.map((value) => ({ value, label: value }))}
              value={people}
              onChange={setPeople}
            />
            <ReasonList
              label="Lifting"
              reasons={[{ id: 'lifting', word: said.word, sentence: said.says, toDo: said.todo }]}
            />
            <FigureList
              prefer={prefer}
              figures={[
                {
                  term: weight.value.readOn ? 'Weighs as last read' : `Weighs at ${weight.value.mc} %`,
                  value: mass ?? '',
                  how: weight.value.steps,
                },
                {
                  term: `At ${DRY_ENOUGH} %`,
                  value: sayMass(weight.value.dry.value, prefer),
                  how: weight.value.dry.how,
                },
                {
                  term: 'Limit for one, from knee height by its edge',
                  value: sayMass(weight.value.lifting.value.limitKg, prefer),
                  how: recommendedWeight(SLAB_LIFT).how,
                },
                ...(weight.value.lifting.value.index === null
                  ? []
                  : [
                      {
                        term: 'Load on each over that limit',
                        value: `× ${weight.value.lifting.value.index.toFixed(1)}`,
                        how: weight.value.lifting.how,
                      },
                    ]),
              ]}
            />
          </>
        ) : weight.ok ? null : (
          <NoFigure said={sayWeightTrouble(weight.error, species?.name ?? piece.wood)} label="Weight" />
        )}
        {piece.form === 'board' ? (
          <SelectField
            label="Sold as"
            hint="The thickness the seller counts, rough and before it was surfaced."
            options={QUARTER_THICKNESSES.filter((each) => each.quarters >= 4).map((each) => ({
              value: String(each.quarters),
              label: `${each.quarters}/4`,
            }))}
            value={quarters}
            onChange={setQuarters}
          />
        ) : null}
        <FigureList prefer={prefer} figures={measureFigures(measure, piece)} />
        {measure.sellers ? <p className={styles.soft}>{sayDifference(measure.sellers.difference)}</p> : null}
      </div>
    </Fold>
  );
}

function measureFigures(measure: BoardMeasure, piece: FiguredPiece): Figure[] {
  const cubic = measure.cubicMetres;
  const volume = { term: 'Volume', value: `${cubic.value.toFixed(4)} m³`, how: [cubic.how, measure.squareMetres.how] };
  if (piece.form === 'sheet') return [volume];
  return [
    volume,
    {
      term: 'Board feet, what is there',
      value: measure.boardFeet.value.toFixed(2),
      how: [measure.boardFeet.how, cubic.how, measure.squareMetres.how],
    },
    ...(measure.sellers
      ? [
          {
            term: 'Board feet, as a seller counts',
            value: String(measure.sellers.boardFeet.value),
            how: [measure.sellers.boardFeet.how, measure.sellers.surface.how],
          },
        ]
      : []),
  ];
}

function sayDifference({ boardFeet, share }: { boardFeet: number; share: number | null }): string {
  const percent = share === null ? '' : `, ${Math.abs(Math.round(share * 100))} %`;
  if (Math.abs(boardFeet) < 0.005) return 'The seller counts what is there.';
  return boardFeet > 0
    ? `The seller counts ${boardFeet.toFixed(2)} more than is there${percent}: whole feet of surface, and the thickness before planing.`
    : `The seller counts ${(-boardFeet).toFixed(2)} less than is there${percent}: parts of a foot are dropped, and the board is fuller than its name.`;
}
