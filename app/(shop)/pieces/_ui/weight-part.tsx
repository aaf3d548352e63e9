'use client';

import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { Fold } from '@/app/_ui/fold';
import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { NoFigure } from '@/app/(shop)/pieces/_ui/no-figure';
import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import type { SayDays } from '@/app/(shop)/pieces/say-drying';
import { sayLifting } from '@/app/(shop)/pieces/say-lifting';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import { sayWeightTrouble } from '@/app/(shop)/pieces/say-trouble';
import { DRY_ENOUGH, workOutWeight } from '@/app/(shop)/pieces/work-out-weight';
import { sayDate } from '@/shared/calendar/say-date';
import type { UnitSystem } from '@/shared/units/unit-system';
import { SLAB_LIFT } from '@/shared/wood/lifting-caution';
import { recommendedWeight } from '@/shared/wood/recommended-weight';
import type { Species } from '@/shared/wood/species';

export interface PartProps {
  piece: FiguredPiece;
  species: Species | null;
  prefer: UnitSystem;
}

const PEOPLE = ['1', '2', '3', '4'];

/** What a piece weighs and who may lift it. */
export function WeightPart({ piece, species, prefer, today, order }: PartProps & SayDays) {
  const [people, setPeople] = useState('2');
  const weight = workOutWeight(piece, species, Number(people));
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
                ? `at ${weight.value.mc} %, as read on ${sayDate(weight.value.readOn, { order, today })}`
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
      </div>
    </Fold>
  );
}
