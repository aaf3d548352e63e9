'use client';

import { type ComponentType, useEffect, useState } from 'react';
import { Key } from '@/app/_ui/keys';
import type { Later } from '@/app/_ui/later/later';
import { PlainError } from '@/app/_ui/plain-error';

export interface LaterPartProps<Props extends object> {
  of: Later<Props>;
  given: Props;
  /** What is safe while the part does not come: "This pull is kept here. Nothing is in the book yet." */
  kept: string;
}

/**
 * Shows a part whose script comes after the first load: at once where it was fetched ahead, so that what takes the focus in
 * it takes it as it would otherwise; where the script does not come, it says so and tries again.
 */
export function LaterPart<Props extends object>({ of, given, kept }: LaterPartProps<Props>) {
  const [state, setState] = useState<'waiting' | 'come' | 'failed'>('waiting');
  const Part: ComponentType<Props> | undefined = of.part();
  const fetching = Part === undefined && state === 'waiting';
  useEffect(() => {
    if (!fetching) return;
    let gone = false;
    const to = (next: 'come' | 'failed') => () => gone || setState(next);
    of.fetch().then(to('come'), to('failed'));
    return () => {
      gone = true;
    };
  }, [of, fetching]);

  if (Part) return <Part {...given} />;
  if (state !== 'failed') return <p role="status">Getting ready…</p>;
  return (
    <PlainError
      happened="The next part of this page could not be fetched."
      kept={kept}
      toDo="Come back into Wi-Fi and press the key. If it stays, load the page again."
    >
      <Key onClick={() => setState('waiting')}>Try again</Key>
    </PlainError>
  );
}
