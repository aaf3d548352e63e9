'use client';

import { Apology } from '@/app/_ui/apology';

export default function OutsideError(props: { error: unknown; retry: () => void }) {
  return (
    <main>
      <Apology {...props} />
    </main>
  );
}
