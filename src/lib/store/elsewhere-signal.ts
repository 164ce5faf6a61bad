/**
 * Says when to look for what other tabs kept, and tells them when to look. A message carries
 * nothing: the database is the one place where entries are read and checked.
 *
 * A message may not reach a page that sleeps, so it looks again when it comes to the front. Where
 * there is no BroadcastChannel (Safari before 15.4), a page that is seen looks about once in a
 * second instead; each time it is one small read.
 */
export function listenElsewhere(name: string, look: () => void): ElsewhereSignal {
  let channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(name);
  channel?.addEventListener('message', look);
  const clock = channel ? undefined : setInterval(() => isSeen() && look(), lookEveryMs);
  const lookIfSeen = (): void => void (isSeen() && look());
  for (const event of wakingEvents) globalThis.addEventListener(event, lookIfSeen);
  return {
    announce: () => channel?.postMessage('look'),
    stop() {
      channel?.close();
      channel = null;
      clearInterval(clock);
      for (const event of wakingEvents) globalThis.removeEventListener(event, lookIfSeen);
    },
  };
}

/** An entry has to be seen in another tab within a second. */
const lookEveryMs = 700;

/** All of them reach the window: `visibilitychange` rises to it from the document. */
const wakingEvents = ['visibilitychange', 'focus', 'pageshow'] as const;

/** A worker has no document, and is never hidden. */
const isSeen = (): boolean => !('document' in globalThis) || document.visibilityState === 'visible';

export interface ElsewhereSignal {
  announce(): void;
  stop(): void;
}
