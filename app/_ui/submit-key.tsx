'use client';

import type { ReactNode } from 'react';
import { useFormStatus } from 'react-dom';
import { Key, type KeyVariant } from '@/app/_ui/keys';

export interface SubmitKeyProps {
  children: ReactNode;
  /** What is happening while the form is on its way: "Writing into the book". */
  pendingWords: string;
  variant?: KeyVariant;
  name?: string;
  value?: string;
  disabled?: boolean;
}

/** The key that sends the form it stands in, and says so while the answer is on its way. */
export function SubmitKey({ children, pendingWords, ...rest }: SubmitKeyProps) {
  const { pending } = useFormStatus();
  return (
    <Key {...rest} type="submit" pending={pending} pendingWords={pendingWords}>
      {children}
    </Key>
  );
}
