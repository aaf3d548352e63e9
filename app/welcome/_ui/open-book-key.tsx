import { LinkKey } from '@/app/_ui/keys';

/** For whoever finds that somebody else began the book meanwhile. */
export function OpenBookKey() {
  return (
    <LinkKey href="/arrive" variant="ghost">
      Open the book
    </LinkKey>
  );
}
