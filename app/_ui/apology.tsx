'use client';

import { Key, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { PlainError } from '@/app/_ui/plain-error';

/** Stands where a page could not be drawn. In production the server's own words stay in its log; the reference finds them there. */
export function Apology({ error, retry }: { error: unknown; retry: () => void }) {
  const digest = error instanceof Error && 'digest' in error ? String(error.digest) : undefined;
  return (
    <Page title="This page did not open">
      <PlainError
        happened="Sorry: something went wrong that this program did not expect."
        kept="The book is as it was: every entry is written whole or not at all."
        toDo="Try again. If it stays, the server’s log has what happened."
        reference={digest}
      >
        <Key onClick={retry}>Try again</Key>
        <LinkKey href="/on-hand" variant="ghost">
          Go to what is on hand
        </LinkKey>
      </PlainError>
    </Page>
  );
}
