import type { ReactNode } from 'react';
import { Frame } from '@/app/_ui/frame/frame';
import { ScanProvider } from '@/app/_ui/scanner/scan-provider';

export default function ShopLayout({ children }: { children: ReactNode }) {
  return (
    <ScanProvider>
      <Frame>{children}</Frame>
    </ScanProvider>
  );
}
