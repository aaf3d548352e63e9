'use client';

import { useState } from 'react';
import { Key } from '@/app/_ui/keys';
import type { Scan, ScanHandler } from '@/app/_ui/scanner/scan';
import { TypedCode } from '@/app/_ui/scanner/typed-code';

/** A code that nearly reads, put right by hand: the field opens with what was read, at the character that is wrong. */
export function CorrectCode({
  scan,
  at,
  onScan,
}: {
  scan: Pick<Scan, 'text' | 'symbology'>;
  at: number;
  onScan: ScanHandler;
}) {
  const [isOpen, setOpen] = useState(false);
  if (!isOpen) {
    return (
      <Key variant="ghost" onClick={() => setOpen(true)}>
        Correct it
      </Key>
    );
  }
  return (
    <TypedCode
      start={{ text: scan.text, at }}
      onCode={(typed) => onScan({ ...typed, symbology: typed.symbology ?? scan.symbology })}
      onClose={() => setOpen(false)}
    />
  );
}
