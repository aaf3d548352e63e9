export function whenChanged(
  where: { root: string; stamps: string },
  name: string,
  inputs: readonly string[],
  output: string,
  work: () => Promise<unknown>,
): Promise<boolean>;
