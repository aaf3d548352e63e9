'use client';

import { useState } from 'react';
import styles from '@/app/_ui/bell/bell.module.css';
import { type BellAble, bellAble, turnBell, useBell } from '@/app/_ui/bell/bell-state';
import { Key } from '@/app/_ui/keys';

const WHY_NOT: Readonly<Record<Exclude<BellAble, 'allowed' | 'not-asked'>, string>> = {
  unsupported:
    'This browser has no notifications. On an iPhone or iPad, put Flitchbook on the home screen first and open it from there.',
  'not-secure':
    'Browsers ring only for a page at localhost or behind https, and this page is plain http. Watch itself, and the calendar, work here all the same.',
  denied:
    'The browser was told not to let this page ring. Allow notifications for it in the browser’s settings, then come back.',
};

/** Turns this device's bell on and off. The browser is asked only on a press. */
export function BellSetting() {
  const state = useBell();
  const [said, setSaid] = useState('');
  const [pending, setPending] = useState(false);

  const turnOn = async () => {
    setPending(true);
    setSaid('');
    const allowed = bellAble() === 'allowed' || (await Notification.requestPermission()) === 'granted';
    if (!allowed) {
      setSaid('The browser did not allow it, so the bell stays off.');
      setPending(false);
      turnBell(false);
      return;
    }
    const ring = await import('@/app/_ui/bell/ring');
    await ring.fetchWorker();
    // What is in Watch already is known before the bell is on: it does not ring for all of it.
    const lines = await ring.lookAndRing({ quietly: true });
    turnBell(true);
    const body =
      lines === undefined
        ? 'The book could not be asked yet.'
        : `${lines} ${lines === 1 ? 'line' : 'lines'} in Watch now.`;
    await ring
      .show({ title: 'The bell rings here', body })
      .catch(() => setSaid('It is on, but the browser showed nothing just now.'));
    setPending(false);
  };
  const turnOff = async () => {
    turnBell(false);
    const { dropWorker } = await import('@/app/_ui/bell/ring');
    await dropWorker();
  };

  return (
    <div className={styles.bell}>
      <p>
        A bell on this device rings once for each line that is new in Watch, while Flitchbook is open in the browser or
        from the home screen. Closed, it is silent: then the calendar tells you.
      </p>
      <p role="status" className={styles.state}>
        {said ||
          (state === 'on'
            ? 'The bell is on, on this device.'
            : state === 'allowed' || state === 'not-asked'
              ? 'The bell is off.'
              : state
                ? WHY_NOT[state]
                : '')}
      </p>
      {state === 'on' ? (
        <Key variant="ghost" onClick={turnOff}>
          Turn the bell off
        </Key>
      ) : state === 'allowed' || state === 'not-asked' ? (
        <Key variant="ghost" onClick={turnOn} pending={pending} pendingWords="Asking the browser">
          Turn the bell on, on this device
        </Key>
      ) : null}
    </div>
  );
}
