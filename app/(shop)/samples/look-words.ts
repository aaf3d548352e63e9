import type { LookResult } from '@/app/_server/samples/look-at-sample';

/** What a kept sample was found to be. */
export const LOOKS: Readonly<Record<LookResult, string>> = {
  sound: 'Sound',
  soft: 'Soft',
  yellowed: 'Yellowed',
  cracked: 'Cracked',
  other: 'Something else',
};
