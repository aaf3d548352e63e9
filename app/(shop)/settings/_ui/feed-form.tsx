'use client';

import { useRef, useState, useSyncExternalStore } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/settings/_ui/settings.module.css';
import { changeFeedAction } from '@/app/(shop)/settings/actions';

const never = () => () => undefined;

/** The calendar's secret address: made, copied, renewed, ended. */
export function FeedForm({ secret }: { secret: string | null }) {
  const { run, pending, problem } = useAct(changeFeedAction);
  const [asking, setAsking] = useState<'renew' | 'end'>();
  const say = useNotice();
  const field = useRef<HTMLDivElement>(null);
  const origin = useSyncExternalStore(
    never,
    () => window.location.origin,
    () => '',
  );
  const address = secret ? `${origin}/feed/${secret}.ics` : '';
  const here = /\/\/(localhost|127\.|\[::1\])/.test(origin);

  const change = async (to: 'new' | 'none', words: string) => {
    const answer = await run({ to });
    if (!answer.ok) return;
    setAsking(undefined);
    say({ words });
  };
  const copy = async () => {
    const copied = await copyText(address, field.current?.querySelector('input') ?? null);
    say({
      words: copied ? 'The address is copied.' : 'This browser does not copy. Mark the address and copy it by hand.',
    });
  };

  return (
    <div className={styles.form} ref={field}>
      {secret ? (
        <>
          <TextField
            label="The calendar’s address"
            hint="Whoever has it can read these days. It is no sign-in, and opens nothing else of the book."
            value={address}
            onChange={() => undefined}
            readOnly
            autoComplete="off"
            spellCheck={false}
          />
          {here ? (
            <p className={styles.soft}>
              This one works on this computer alone. Open Settings at the computer’s own address in the network, on the
              phone itself, and copy it there.
            </p>
          ) : null}
          <div className={styles.keys}>
            <Key onClick={copy}>Copy the address</Key>
            {asking === undefined ? (
              <>
                <Key variant="ghost" onClick={() => setAsking('renew')}>
                  Renew it
                </Key>
                <Key variant="ghost" onClick={() => setAsking('end')}>
                  End it
                </Key>
              </>
            ) : null}
          </div>
          {asking ? (
            <div className={styles.ask}>
              <p>
                The address above answers no more, at once, on every device that has it.{' '}
                {asking === 'renew'
                  ? 'You get another to give out.'
                  : 'The days leave those calendars at their next look.'}
              </p>
              <Key
                variant="stop"
                pending={pending}
                pendingWords="Writing into the book"
                onClick={() =>
                  asking === 'renew'
                    ? change('new', 'There is a new address. The old one answers no more.')
                    : change('none', 'The calendar has no address any more.')
                }
              >
                {asking === 'renew' ? 'Yes, make it another address' : 'Yes, end the calendar'}
              </Key>
              <Key variant="ghost" onClick={() => setAsking(undefined)}>
                Leave it as it is
              </Key>
            </div>
          ) : null}
        </>
      ) : (
        <Key
          variant="ghost"
          pending={pending}
          pendingWords="Writing into the book"
          onClick={() => change('new', 'The calendar has its address. Copy it into your calendar program.')}
        >
          Make the calendar’s address
        </Key>
      )}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
    </div>
  );
}

/** Copies a text; where the page is plain http there is no clipboard, and what is marked in a field is copied instead. */
async function copyText(text: string, field: HTMLInputElement | null): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    field?.focus();
    field?.select();
    return document.execCommand('copy');
  }
}
