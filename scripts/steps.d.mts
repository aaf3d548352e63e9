export function run(
  command: string,
  args: readonly string[],
  how?: { quiet?: boolean; env?: Record<string, string> },
): Promise<string>;
export function generate(): Promise<void>;
export function build(): Promise<void>;
