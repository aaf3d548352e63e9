import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import styles from '@/app/(shop)/pieces/[label]/photo/_ui/photo.module.css';
import {
  OWN_FIELDS,
  REFERENCES,
  type ReferenceName,
  type SizeField,
  TAPE_FIELDS,
  type TypedMeasuring,
} from '@/app/(shop)/pieces/[label]/photo/typed-measuring';
import type { UnitSystem } from '@/shared/units/unit-system';

const NAMES: Record<ReferenceName, { label: string; hint?: string }> = {
  A3: { label: 'A3', hint: '297 × 420 mm' },
  A4: { label: 'A4', hint: '210 × 297 mm' },
  Letter: { label: 'Letter', hint: '8 1/2 × 11 in' },
  Tabloid: { label: 'Tabloid', hint: '11 × 17 in' },
  own: { label: 'A panel of mine', hint: 'square cut' },
  tapes: { label: 'Two tapes', hint: 'square across' },
};
const WORDS: Record<SizeField, string> = {
  long: 'Its long side',
  short: 'Its short side',
  firstLow: 'First tape reads, at mark 1',
  firstHigh: 'First tape reads, at mark 2',
  firstCross: 'First tape reads, where they cross',
  secondLow: 'Second tape reads, at mark 3',
  secondHigh: 'Second tape reads, at mark 4',
  secondCross: 'Second tape reads, where they cross',
};

/** What of known size lies on the slab. */
export function ReferenceFields({
  typed,
  problems,
  prefer,
  onChange,
}: {
  typed: TypedMeasuring;
  problems: Readonly<Record<string, string>>;
  prefer: UnitSystem;
  onChange: (change: Partial<TypedMeasuring>) => void;
}) {
  const fields: readonly SizeField[] =
    typed.reference === 'own' ? OWN_FIELDS : typed.reference === 'tapes' ? TAPE_FIELDS : [];
  return (
    <>
      <ChoiceChips
        label="What lies on it"
        hint="Flat on the wood, near the middle, all four corners in sight."
        options={REFERENCES.map((value) => ({ value, ...NAMES[value] }))}
        value={typed.reference}
        onChange={(name) => {
          const reference = REFERENCES.find((one) => one === name);
          if (reference) onChange({ reference });
        }}
      />
      {fields.length ? (
        <div className={styles.sizes}>
          {fields.map((field) => (
            <LengthField
              key={field}
              prefer={prefer}
              label={WORDS[field]}
              value={typed.sizes[field]}
              error={problems[field]}
              onChange={(text) => onChange({ sizes: { ...typed.sizes, [field]: text } })}
            />
          ))}
        </div>
      ) : null}
    </>
  );
}
