'use client';

import { Apology } from '@/app/_ui/apology';

/** Inside the frame, so that the way to the other pages stays. */
export default function ShopError(props: { error: unknown; retry: () => void }) {
  return <Apology {...props} />;
}
