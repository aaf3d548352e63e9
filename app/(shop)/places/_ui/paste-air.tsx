'use client';

import { type FormEvent, useDeferredValue, useMemo, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import acts from '@/app/(shop)/_parts/acts/acts.module.css';
import type { NoteAirProps } from '@/app/(shop)/places/_ui/note-air';
import styles from '@/app/(shop)/places/_ui/places.module.css';
import { pasteAirAction } from '@/app/(shop)/places/actions';
import { MOST_LOGGER_TEXT } from '@/app/(shop)/places/most-logger-text';
import { readAirLines } from '@/shared/wood/read-air-lines';
import { airDays } from '@/shared/wood/room-air';
import { sayWrongLine } from '@/shared/wood/say-wrong-line';

/** So many of the lines that do not read are named one by one. */
const MOST_NAMED = 8;
const count = (many: number, thing: string) => `${many} ${thing}${many === 1 ? '' : 's'}`;

/** Takes the lines a logger wrote. Those that read go into the book, a mean a day; the others stay in the box, each with what is wrong. */
export function PasteAir({ label, prefer, today, order }: NoteAirProps) {
  const { run, pending, problem } = useAct(pasteAirAction);
  const [lines, setLines] = useState('');
  const [done, setDone] = useState('');
  const looked = useDeferredValue(lines);
  const { found, days } = useMemo(() => {
    const read = readAirLines(looked, { today, order, prefer });
    return { found: read, days: airDays(read.lines).length };
  }, [looked, today, order, prefer]);

  const readFile = async (file: File | undefined) => {
    if (!file) return;
    const text = await file.text();
    setLines((before) => [before.trimEnd(), text.trim()].filter(Boolean).join('\n'));
  };

  const write = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending) return;
    setDone('');
    const { wrong: left, heading } = readAirLines(lines, { today, order, prefer });
    const answer = await run({ label, lines });
    if (!answer.ok) return;
    const { kept, known } = answer.answer;
    const stays = left.length > 0 ? [heading ?? [], left.map(({ text }) => text)].flat().join('\n') : '';
    // What was typed below them while they were written stays too.
    setLines((now) => (now.startsWith(lines) ? `${stays}${now.slice(lines.length)}` : now));
    setDone(
      [
        `${count(kept, 'day')} ${kept === 1 ? 'is' : 'are'} in the book.`,
        known > 0 ? `${count(known, 'day')} stood there already.` : '',
        left.length > 0
          ? `${count(left.length, 'line')} that did not read ${left.length === 1 ? 'is' : 'are'} still in the box.`
          : '',
      ]
        .filter(Boolean)
        .join(' '),
    );
  };

  return (
    <form onSubmit={write} noValidate className={styles.form}>
      <TextField
        label="Lines of the logger"
        hint="A line each: day, temperature, humidity, with commas, semicolons or tabs between. A heading may say which is which. Many lines of one day become their mean."
        lines={6}
        code
        value={lines}
        onChange={setLines}
        maxLength={MOST_LOGGER_TEXT}
        error={problem?.fields?.lines}
      />
      <label className={styles.file}>
        Or read them from its file
        <input
          type="file"
          accept=".csv,.txt,.tsv,text/csv,text/plain"
          className={acts.picture}
          onChange={(change) => {
            const input = change.currentTarget;
            readFile(input.files?.[0]).finally(() => {
              // The same file can be chosen again.
              input.value = '';
            });
          }}
        />
      </label>
      {looked.trim() === '' ? null : (
        <div className={styles.echo}>
          <p>
            {count(found.lines.length, 'line')} of {count(days, 'day')} read
            {found.wrong.length > 0
              ? `; ${count(found.wrong.length, 'line')} ${found.wrong.length === 1 ? 'does' : 'do'} not:`
              : '.'}
          </p>
          {found.wrong.length > 0 ? (
            <ul className={styles.wrong}>
              {found.wrong.slice(0, MOST_NAMED).map((line) => (
                <li key={line.nr}>{sayWrongLine(line)}</li>
              ))}
              {found.wrong.length > MOST_NAMED ? <li>And {found.wrong.length - MOST_NAMED} more.</li> : null}
            </ul>
          ) : null}
        </div>
      )}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key type="submit" variant="ghost" pending={pending} pendingWords="Writing into the book">
        {days > 0 ? `Write ${count(days, 'day')}` : 'Write the lines that read'}
      </Key>
      <div role="status" className={styles.added}>
        {done ? <p>{done}</p> : null}
      </div>
    </form>
  );
}
