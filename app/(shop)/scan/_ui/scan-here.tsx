'use client';

import { useRouter } from 'next/navigation';
import { scanPath } from '@/app/_ui/scanner/scan-provider';
import { Scanner } from '@/app/_ui/scanner/scanner';

/** The scanner for the question "what is this?": each scan goes to the page that answers it. */
export function ScanHere() {
  const router = useRouter();
  return (
    <Scanner
      onScan={(scan) => router.push(scanPath(scan))}
      prompt="Scan anything: a tin, a piece, a place, a maker’s code."
    />
  );
}
