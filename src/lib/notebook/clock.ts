/** Where the notebook gets the moment, the time zone and chance from; tests hand in their own. */
export interface Clock {
  nowMs(): number;
  /** The family's IANA time zone, such as `Europe/Lisbon`. */
  timeZone(): string;
  randomBytes(count: number): Uint8Array;
}

export const deviceClock: Clock = {
  nowMs: () => Date.now(),
  timeZone: () => Intl.DateTimeFormat().resolvedOptions().timeZone,
  randomBytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
};
