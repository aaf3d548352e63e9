import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { troubleOfBook } from '@/app/_server/book/trouble-of-book';
import { Bell } from '@/app/_ui/bell/bell';
import { Frame } from '@/app/_ui/frame/frame';
import { Page } from '@/app/_ui/page';
import { PlainError } from '@/app/_ui/plain-error';
import { ScanProvider } from '@/app/_ui/scanner/scan-provider';

export default async function ShopLayout({ children }: { children: ReactNode }) {
  await connection();
  const trouble = await troubleOfBook();
  return (
    <ScanProvider>
      <Bell />
      <Frame>
        {trouble ? (
          <Page title="The book is shut">
            <PlainError {...trouble} />
          </Page>
        ) : (
          children
        )}
      </Frame>
    </ScanProvider>
  );
}
