'use client';

import { useLocalStorage } from '@mantine/hooks';
import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { KeyBar } from '@/app/_ui/keys';
import keys from '@/app/_ui/keys.module.css';
import {
  firstChoice,
  firstFormat,
  type LabelChoice,
  type LabelToPrint,
  type NextPositions,
  readChoice,
  readNextPositions,
} from '@/app/_ui/labels/label-choice';
import { printLink } from '@/app/_ui/labels/label-links';
import { LabelPreview } from '@/app/_ui/labels/label-preview';
import styles from '@/app/_ui/labels/labels.module.css';
import { SheetStart } from '@/app/_ui/labels/sheet-start';
import { LABEL_FORMAT_IDS, LABEL_FORMATS, labelsPerPage } from '@/shared/labels/label-formats';
import { labelRunLength } from '@/shared/labels/label-run';
import { LABEL_SYMBOLS } from '@/shared/labels/label-symbols';
import type { UnitSystem } from '@/shared/units/unit-system';

const PAPERS = [
  { value: 'sheet', label: 'Sheet', hint: 'of labels, office printer' },
  { value: 'single', label: 'Single label', hint: 'label printer' },
] as const;
const SYMBOLS = Object.values(LABEL_SYMBOLS).map(({ id, name, because }) => ({
  value: id,
  label: name,
  hint: because,
}));
const COPIES = [
  { value: '1', label: 'One each' },
  { value: '2', label: 'Two each', hint: 'lid and side' },
];

const PLACE_COPIES = [
  { value: '1', label: 'One each' },
  { value: '2', label: 'Two each' },
];

/** Chooses how the given labels are printed, shows them as they will be, and opens them ready to print. */
export function LabelSheetForm({ labels, prefer }: { labels: readonly LabelToPrint[]; prefer: UnitSystem }) {
  const [kept, setChoice] = useLocalStorage<LabelChoice>({
    key: 'flitchbook-label-choice',
    defaultValue: firstChoice(prefer),
    deserialize: (text) => readChoice(text, prefer),
  });
  const [next, setNext] = useLocalStorage<NextPositions>({
    key: 'flitchbook-label-next',
    defaultValue: {},
    deserialize: readNextPositions,
  });
  const [picked, setPicked] = useState<NextPositions>({});

  const copiesOf = labels.every((label) => label.kind === 'place') ? 'placeCopies' : 'copies';
  const choice: LabelChoice = { ...kept, copies: kept[copiesOf] };
  const format = LABEL_FORMATS[choice.format];
  const perPage = labelsPerPage(format);
  const start = format.kind === 'sheet' ? Math.min(picked[format.id] ?? next[format.id] ?? 1, perPage) : 1;
  const count = labelRunLength(labels, choice.copies);
  const pages = Math.ceil((start - 1 + count) / perPage);
  const slabs = labels.filter((label) => label.kind === 'slab').length;

  const change = (part: Partial<LabelChoice>) => setChoice({ ...kept, ...part });
  // This print keeps the start it was opened with, so that it can be opened again; the next visit goes on after it.
  const keepPlace = () => {
    if (format.kind !== 'sheet') return;
    setPicked({ ...picked, [format.id]: start });
    setNext({ ...next, [format.id]: ((start - 1 + count) % perPage) + 1 });
  };

  return (
    <>
      <div className={styles.form}>
        <div className={styles.choices}>
          <ChoiceChips
            label="Paper"
            options={PAPERS}
            value={format.kind}
            onChange={(kind) => change({ format: firstFormat(kind === 'single' ? 'single' : 'sheet', prefer) })}
          />
          <ChoiceChips
            label="Size"
            options={LABEL_FORMAT_IDS.filter((id) => LABEL_FORMATS[id].kind === format.kind).map((id) => ({
              value: id,
              label: LABEL_FORMATS[id].name,
            }))}
            value={choice.format}
            onChange={(value) => change({ format: LABEL_FORMAT_IDS.find((id) => id === value) ?? choice.format })}
          />
          <ChoiceChips
            label="Code"
            options={SYMBOLS}
            value={choice.symbology}
            onChange={(value) => change({ symbology: value === 'qr' ? 'qr' : 'data-matrix' })}
          />
          {slabs < labels.length ? (
            <ChoiceChips
              label="Copies"
              options={copiesOf === 'copies' ? COPIES : PLACE_COPIES}
              value={String(choice.copies)}
              onChange={(value) => change({ [copiesOf]: value === '1' ? 1 : 2 })}
            />
          ) : null}
          {slabs > 0 ? <p className={styles.soft}>A slab always gets two, one for each end.</p> : null}
        </div>
        <div className={styles.picture}>
          <LabelPreview labels={labels} choice={choice} />
          {format.kind === 'sheet' ? (
            <SheetStart
              format={format}
              start={start}
              count={count}
              onStart={(position) => setPicked({ ...picked, [format.id]: position })}
            />
          ) : null}
        </div>
      </div>
      <p className={styles.soft}>
        {pages === 1 ? 'One page' : `${pages} pages`}
        {format.kind === 'sheet' ? ` of ${format.page.name}` : ''}. Print at 100 %: “fit to page” moves the print off
        the labels.
      </p>
      <KeyBar>
        <a
          className={keys.key}
          data-variant="main"
          href={printLink(labels, choice, start)}
          target="_blank"
          rel="noopener"
          onClick={keepPlace}
        >
          Open the PDF, {count === 1 ? '1 label' : `${count} labels`}
        </a>
      </KeyBar>
    </>
  );
}
