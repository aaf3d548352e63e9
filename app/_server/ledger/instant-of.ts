/** An instant of a raw read, milliseconds: the databases differ in what one comes as. 0 where there is none. */
export function instantOf(raw: unknown): number {
  if (raw === null || raw === undefined) return 0;
  if (raw instanceof Date) return raw.getTime();
  return new Date(typeof raw === 'string' ? raw : Number(raw)).getTime();
}
