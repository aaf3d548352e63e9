'use client';

import { useRef, useState } from 'react';
import { judgePhotoFile, photoRefusalWords } from '@/app/_ui/scanner/photo-limits';

/**
 * For a field that takes a photo: hands on what may be sent, and has the words for what may not. Checked on the device,
 * because a file that is too large would be carried to the book, over the workshop's Wi-Fi, only to be refused.
 */
export function usePhotoCheck(onChange: (photo: File | undefined) => void): {
  wrong: string | undefined;
  take: (file: File | undefined) => Promise<void>;
} {
  const [wrong, setWrong] = useState<string>();
  const latest = useRef<File>(undefined);
  async function take(file: File | undefined) {
    latest.current = file;
    setWrong(undefined);
    onChange(undefined);
    if (!file) return;
    const judged = await judgePhotoFile(file).catch(() => undefined);
    if (latest.current !== file) return;
    if (judged?.ok) return onChange(file);
    setWrong(judged ? photoRefusalWords(judged.error) : 'That file cannot be read from this device. Choose it again.');
  }
  return { wrong, take };
}
