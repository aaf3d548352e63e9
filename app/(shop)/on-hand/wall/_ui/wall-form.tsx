'use client';

import { useRouter } from 'next/navigation';
import { useState, useTransition } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key, LinkKey } from '@/app/_ui/keys';
import styles from '@/app/(shop)/on-hand/wall/_ui/wall.module.css';
import type { TypedWall } from '@/app/(shop)/on-hand/wall/wall-ask';

const ORDERS = {
  largest: 'Largest first',
  thickest: 'Thickest first',
  species: 'By wood and flitch',
  newest: 'Newest first',
};

const hrefOf = ({ species, thick, free, order }: TypedWall) => {
  const params = new URLSearchParams();
  if (species) params.set('species', species);
  if (thick.trim()) params.set('thick', thick.trim());
  if (free) params.set('free', 'yes');
  if (order !== 'largest') params.set('order', order);
  const text = params.toString();
  return text ? `/on-hand/wall?${text}` : '/on-hand/wall';
};

/** Which slabs hang on the wall, and in what order; and the way to what a top can be cut from. */
export function WallForm({
  typed: first,
  woods,
  wrong,
}: {
  typed: TypedWall;
  woods: readonly string[];
  wrong: boolean;
}) {
  const router = useRouter();
  const [typed, setTyped] = useState(first);
  const [pending, start] = useTransition();
  const show = (next: TypedWall) => {
    setTyped(next);
    start(() => router.replace(hrefOf(next), { scroll: false }));
  };
  const now = [
    first.species,
    first.thick ? `${first.thick} or thicker` : '',
    first.free ? 'free' : '',
    first.order === 'largest' ? '' : ORDERS[first.order].toLowerCase(),
  ].filter(Boolean);
  const top = first.species ? `/on-hand/fits?species=${encodeURIComponent(first.species)}` : '/on-hand/fits';
  return (
    <>
      <Fold title="Which slabs" now={now.join(', ') || 'all of them'} open={wrong}>
        <form
          className={styles.form}
          noValidate
          onSubmit={(submit) => {
            submit.preventDefault();
            show(typed);
          }}
        >
          <SelectField
            label="Wood"
            none="Every wood"
            options={woods.map((wood) => ({ value: wood, label: wood }))}
            value={typed.species}
            onChange={(species) => show({ ...typed, species })}
          />
          <TextField
            label="At least this thick"
            hint="50 mm, 2 in, 8/4."
            optional
            maxLength={40}
            value={typed.thick}
            onChange={(thick) => setTyped({ ...typed, thick })}
            error={wrong && typed.thick === first.thick ? 'This does not read as a thickness.' : undefined}
          />
          <ChoiceChips
            label="Promised or held"
            options={[
              { value: 'all', label: 'Show them too' },
              { value: 'free', label: 'Only free ones' },
            ]}
            value={typed.free ? 'free' : 'all'}
            onChange={(value) => show({ ...typed, free: value === 'free' })}
          />
          <SelectField
            label="Order"
            options={Object.entries(ORDERS).map(([value, label]) => ({ value, label }))}
            value={typed.order}
            onChange={(value) => show({ ...typed, order: value as TypedWall['order'] })}
          />
          <Key type="submit" variant="ghost" pending={pending} pendingWords="Looking">
            Show these
          </Key>
        </form>
      </Fold>
      <div className={styles.ways}>
        <LinkKey variant="ghost" href={top}>
          What can a top be cut from?
        </LinkKey>
      </div>
    </>
  );
}
