/** The outcome of something that can fail in an expected way. A bug throws; an expected failure is a value. */
export type Result<T, E> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

/** Wraps a success. `ok(3)` is `{ ok: true, value: 3 }`. */
export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

/** Wraps an expected failure. The error carries a literal `code`; words for people are made elsewhere. */
export function err<E>(error: E): { readonly ok: false; readonly error: E } {
  return { ok: false, error };
}

/** The value of a success, or a thrown bug. For places that have already proved the success. */
export function unwrap<T, E>(result: Result<T, E>): T {
  if (result.ok) return result.value;
  throw new Error(`Expected a success, got ${JSON.stringify(result.error)}`);
}
