'use client';

import { type MantineColorScheme, useMantineColorScheme } from '@mantine/core';
import { useEffect, useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';

const CHOICES = [
  { value: 'auto', label: 'As this device' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
] as const satisfies readonly { value: MantineColorScheme; label: string }[];

/** Light or dark for this device, kept on it. */
export function LightSetting() {
  const { colorScheme, setColorScheme } = useMantineColorScheme();
  const [known, setKnown] = useState(false);
  // The server cannot know what this device has kept, so the first drawing shows the default.
  useEffect(() => setKnown(true), []);
  return (
    <ChoiceChips
      label="Light or dark"
      hint="Kept on this device only."
      options={CHOICES}
      value={known ? colorScheme : 'auto'}
      onChange={(value) => {
        const choice = CHOICES.find((one) => one.value === value);
        if (choice) setColorScheme(choice.value);
      }}
    />
  );
}
