export function whereToServe(
  data: string,
  env: Readonly<Record<string, string | undefined>>,
): { host: string; port: number };
