/** A key for one act, never used before. Not `crypto.randomUUID`: on a plain-http workshop network it does not exist. */
export function freshKey(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
