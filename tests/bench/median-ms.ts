/** The median time of several runs of some work, in milliseconds. */
export function medianMs(work: () => unknown, runs = 7): number {
  const took = Array.from({ length: runs }, () => {
    const began = performance.now();
    work();
    return performance.now() - began;
  });
  return took.sort((left, right) => left - right)[Math.floor(runs / 2)]!;
}
