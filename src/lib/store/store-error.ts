import type { StoreError } from './journal-store';

/**
 * What a failure in the browser's database means to whoever keeps a journal in it.
 * The names are those of the Indexed Database API 3.0 (W3C) and of the DOM standard.
 * Anything that no database can cause is a mistake of our own, and is thrown on.
 */
export function storeErrorOf(thrown: unknown): StoreError {
  if (!(thrown instanceof DOMException) || thrown.name === 'DataCloneError') throw thrown;
  return { kind: kindByName[thrown.name] ?? 'unavailable', detail: describeFailure(thrown) };
}

/** The same for a failure in opening, where whatever is unforeseen means: no database here. */
export function openErrorOf(thrown: unknown): StoreError {
  const kind = thrown instanceof DOMException ? kindByName[thrown.name] : undefined;
  const isSure = kind === 'no-room' || kind === 'newer-program-has-it';
  return { kind: isSure ? kind : 'unavailable', detail: describeFailure(thrown) };
}

const kindByName: Readonly<Record<string, StoreError['kind']>> = {
  QuotaExceededError: 'no-room',
  AbortError: 'interrupted',
  TransactionInactiveError: 'interrupted',
  UnknownError: 'interrupted',
  TimeoutError: 'interrupted',
  InvalidStateError: 'closed',
  VersionError: 'newer-program-has-it',
};

/** The browser's own words, for the one who reports it. */
const describeFailure = (thrown: unknown): string =>
  thrown instanceof Error ? `${thrown.name}: ${thrown.message}` : String(thrown);
