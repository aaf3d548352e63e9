import { redirect } from 'next/navigation';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readBook } from '@/app/_server/book/read-book';
import { theBook } from '@/app/_server/book/the-book';
import { troubleOfBook } from '@/app/_server/book/trouble-of-book';
import { Page } from '@/app/_ui/page';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/welcome/welcome.module.css';

/** Where there is no book yet. Where there is one, it opens. */
export default async function WelcomeLayout({ children }: { children: ReactNode }) {
  await connection();
  const trouble = await troubleOfBook();
  if (!trouble && (await readBook(await theBook(), new Date()))) redirect('/arrive');
  return (
    <main className={styles.page}>
      {trouble ? (
        <Page title="The book is shut">
          <PlainError {...trouble} />
        </Page>
      ) : (
        children
      )}
    </main>
  );
}
