'use client';

import { useRef, useState } from 'react';
import { useShowTrouble } from '@/app/_ui/act/show-trouble';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { Section } from '@/app/_ui/section';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import { LengthField, typedLength } from '@/app/(shop)/pieces/_ui/length-field';
import styles from '@/app/(shop)/pieces/[label]/cut/_ui/cut.module.css';
import type { CutFormProps } from '@/app/(shop)/pieces/[label]/cut/_ui/cut-form';
import { PartsList } from '@/app/(shop)/pieces/[label]/cut/_ui/parts-list';
import { resawAction } from '@/app/(shop)/pieces/[label]/cut/actions';
import type { BecomesWhat } from '@/app/(shop)/pieces/[label]/cut/become';
import { sayHouse } from '@/app/(shop)/pieces/[label]/cut/plan-cut';
import { readKerf } from '@/app/(shop)/pieces/[label]/cut/typed-cut';
import { layOutline } from '@/shared/outline/lay-anew';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printLengthExact } from '@/shared/units/print-length-exact';

const SIXTEENTH_NM = 25_400_000 / 16;

/** Sawn through its thickness: two halves of one outline, a bookmatched pair. */
export function ResawCut({ piece, house, kerf: houseKerf, prefer }: CutFormProps) {
  const [kerf, setKerf] = useState(houseKerf);
  const kerfUm = readKerf(kerf, prefer);
  const half = (piece.thicknessNm - house.kerfNm) / 2;
  const step = prefer === 'metric' ? 100_000 : SIXTEENTH_NM;
  const [upper, setUpper] = useState(() =>
    printLengthExact(nanometres(Math.max(0, Math.round(half / step) * step)), prefer),
  );
  const [as, setAs] = useState<Record<number, BecomesWhat>>({});
  const [freed, setFreed] = useState<readonly number[]>([]);
  const [why, setWhy] = useState('');
  const { run, pending, problem } = useAct(resawAction);
  const form = useRef<HTMLFormElement>(null);
  useShowTrouble(form, problem);
  const upperNm = typedLength(upper, prefer);
  const lowerNm =
    upperNm === undefined || typeof kerfUm !== 'number' ? undefined : piece.thicknessNm - upperNm - kerfUm * 1000;
  const fits = lowerNm !== undefined && lowerNm > 0;
  const likely: BecomesWhat = piece.form === 'pack' ? 'board' : piece.form;
  const rows = [upperNm, lowerNm].map((thick, nr) => ({
    size: `${thick === undefined || thick <= 0 ? 'No' : printLength(nanometres(thick), { prefer })} thick`,
    share: nr === 0 ? 'keeps face A' : 'keeps face B, turned over',
    as: as[nr] ?? likely,
    isBelowHouse: false,
    promised: !freed.includes(nr),
  }));
  const turned = layOutline(piece.outline, { shift: 0, turned: true });

  return (
    <form
      ref={form}
      noValidate
      onSubmit={async (submit) => {
        submit.preventDefault();
        const become = rows.map((row) => ({ as: row.as, promised: row.promised }));
        await run({ label: piece.label, shapeId: piece.shapeId, upper, kerf, become, why });
      }}
    >
      <div className={styles.halves}>
        <SlabDrawing outline={piece.outline} label="The upper half, as it lies" />
        <SlabDrawing outline={turned} label="The lower half, turned over: it mirrors the upper" />
      </div>
      <p className={styles.soft}>
        Opened like a book, the two sawn faces mirror each other. They are kept as a pair, so that neither is given away
        alone unseen.
      </p>
      <div className={styles.columns}>
        <Section title="Where the saw goes">
          <LengthField
            label="Left under face A"
            hint={`Of ${printLength(piece.thicknessNm, { prefer })} in all.`}
            mode="thickness"
            prefer={prefer}
            value={upper}
            onChange={setUpper}
            error={
              problem?.fields?.upper ??
              (lowerNm !== undefined && !fits ? 'Nothing is left for the other half.' : undefined)
            }
          />
          <LengthField
            label="Kerf"
            hint="What the saw takes between the two."
            prefer={prefer}
            value={kerf}
            onChange={setKerf}
            error={problem?.fields?.kerf ?? (typeof kerfUm === 'string' ? kerfUm : undefined)}
          />
        </Section>
        <Section title="The halves">
          <PartsList
            rows={rows}
            house={sayHouse(house, prefer)}
            job={piece.job}
            isSheet={piece.form === 'sheet'}
            onAs={(nr, what) => setAs({ ...as, [nr]: what })}
            onPromised={(nr, promised) => setFreed(promised ? freed.filter((one) => one !== nr) : [...freed, nr])}
          />
          <TextField label="What for" optional maxLength={300} value={why} onChange={setWhy} />
        </Section>
      </div>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Writing">
          Resaw it into a pair
        </Key>
      </KeyBar>
    </form>
  );
}
