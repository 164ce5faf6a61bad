/** Long work done a little at a time, so that the page can draw, and can be told to stop. */
export interface Watch<Progress> {
  readonly signal: AbortSignal;
  readonly onprogress: (progress: Progress) => void;
}

/**
 * Goes through work that stops now and then to report progress, and lets the page draw in between
 * when it has been busy for a while. Null when it was told to stop.
 */
export async function finishInSlices<Progress, Value>(
  work: Generator<Progress, Value, void>,
  { signal, onprogress }: Watch<Progress>,
): Promise<Value | null> {
  let busySince = performance.now();
  for (;;) {
    if (signal.aborted) return null;
    const step = work.next();
    if (step.done) return step.value;
    if (performance.now() - busySince < longestBusyMs) continue;
    onprogress(step.value);
    await breathe();
    busySince = performance.now();
  }
}

/** Reads a file a slice at a time. Null when it was told to stop. */
export async function readBytes(
  file: Blob,
  { signal, onprogress }: Watch<number>,
): Promise<Uint8Array | null> {
  const bytes = new Uint8Array(file.size);
  for (let at = 0; at < file.size; at += sliceBytes) {
    if (signal.aborted) return null;
    bytes.set(new Uint8Array(await file.slice(at, at + sliceBytes).arrayBuffer()), at);
    onprogress(Math.min(at + sliceBytes, file.size));
  }
  return signal.aborted ? null : bytes;
}

/** Lets the page draw and hear. A message is not held back in a page behind another, as a timer is. */
export const breathe = (): Promise<void> =>
  new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => {
      channel.port1.close();
      resolve();
    };
    channel.port2.postMessage(null);
  });

const longestBusyMs = 30;
const sliceBytes = 2_000_000;
