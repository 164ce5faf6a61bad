/** An expected outcome: a value, or an error value that says what went wrong. */
export type Result<Value, Failure> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly error: Failure };

/**
 * A good outcome.
 * @example
 * ok(3) // => { ok: true, value: 3 }
 */
export const ok = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({
  ok: true,
  value,
});

/**
 * An expected failure. Programming mistakes are thrown instead.
 * @example
 * failed({ kind: 'empty' }) // => { ok: false, error: { kind: 'empty' } }
 */
export const failed = <Failure>(
  error: Failure,
): { readonly ok: false; readonly error: Failure } => ({ ok: false, error });
