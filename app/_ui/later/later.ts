import type { ComponentType } from 'react';

/** A part of a page whose script comes after the first load. */
export type Later<Props> = {
  /** Undefined until its script has come. */
  readonly part: () => ComponentType<Props> | undefined;
  /** Fetches the script, once; again where it did not come. */
  readonly fetch: () => Promise<void>;
};

export function later<Props>(load: () => Promise<ComponentType<Props>>): Later<Props> {
  let ready: ComponentType<Props> | undefined;
  return {
    part: () => ready,
    fetch: async () => {
      ready ??= await load();
    },
  };
}
