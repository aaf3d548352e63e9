'use client';

import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';
import { LightSetting } from '@/app/_ui/light-setting';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { useFeedbackSetting } from '@/app/_ui/scanner/feedback-setting';
import { keepOnDevice } from '@/app/(shop)/settings/_ui/keep-on-device';
import styles from '@/app/(shop)/settings/_ui/settings.module.css';

const ON_OFF = [
  { value: 'on', label: 'On' },
  { value: 'off', label: 'Off' },
] as const;

/** What holds for this phone or computer only: whose hand writes, how it looks and sounds. */
export function DeviceForm({
  now,
  otherwise,
}: {
  now: { who: string; device: string };
  otherwise: { who: string; device: string };
}) {
  const router = useRouter();
  const notice = useNotice();
  const [who, setWho] = useState(now.who);
  const [device, setDevice] = useState(now.device);
  const [feedback, setFeedback] = useFeedbackSetting();
  const same = who.trim() === now.who && device.trim() === now.device;

  const keep = (submit: FormEvent) => {
    submit.preventDefault();
    keepOnDevice('flitchbook-who', who);
    keepOnDevice('flitchbook-device', device);
    notice({ words: `From now on this device writes as ${who.trim() || otherwise.who}.` });
    router.refresh();
  };

  return (
    <>
      <form onSubmit={keep} noValidate className={styles.form}>
        <TextField
          label="Who writes here"
          hint={`Stands beside every entry from this device. Without a name it is “${otherwise.who}”.`}
          value={who}
          onChange={setWho}
          optional
          maxLength={60}
          autoComplete="given-name"
          autoCapitalize="words"
        />
        <TextField
          label="What this device is called"
          hint={`So that you know later where it was written. Otherwise it is “${otherwise.device}”.`}
          value={device}
          onChange={setDevice}
          optional
          maxLength={60}
        />
        <Key type="submit" variant="ghost" disabled={same}>
          {same ? 'Nothing is changed yet' : 'Keep it on this device'}
        </Key>
      </form>
      <LightSetting />
      <ChoiceChips
        label="Sound with every scan and verdict"
        hint="Rising for Use, two level tones for Care, long and low for Stop."
        options={ON_OFF}
        value={feedback.sound ? 'on' : 'off'}
        onChange={(value) => {
          setFeedback({ ...feedback, sound: value === 'on' });
          if (value === 'on') giveFeedback('use');
        }}
      />
      <ChoiceChips
        label="Vibration"
        hint="Where the device can; most phones, not iPhones."
        options={ON_OFF}
        value={feedback.vibration ? 'on' : 'off'}
        onChange={(value) => {
          setFeedback({ ...feedback, vibration: value === 'on' });
          if (value === 'on') giveFeedback('use');
        }}
      />
    </>
  );
}
