'use client';

import { useRouter } from 'next/navigation';
import type { Scan } from '@/app/_ui/scanner/scan';
import { scanPath } from '@/app/_ui/scanner/scan-provider';
import { CorrectCode } from '@/app/(shop)/arrive/_ui/correct-code';

/** A code put right by hand goes to the page that answers it. */
export function CorrectHere({ scan, at }: { scan: Pick<Scan, 'text' | 'symbology'>; at: number }) {
  const router = useRouter();
  return <CorrectCode scan={scan} at={at} onScan={(corrected) => router.push(scanPath(corrected))} />;
}
