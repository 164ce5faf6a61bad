/**
 * The chance that a random order of so many signs above and below falls into this few runs or
 * fewer, where a run is a stretch of equal signs. Exact, by counting orders (A. Wald & J. Wolfowitz
 * 1940, Annals of Mathematical Statistics 11, 147-162). Without signs of both kinds there is only
 * one order, and the chance is 1.
 * @example
 * chanceOfSoFewRuns(1, 4, 0) // => 1
 */
export const chanceOfSoFewRuns = (runs: number, above: number, below: number): number => {
  if (above === 0 || below === 0) return 1;
  const logFactorials = logFactorialsTo(above + below);
  // Every product below holds two factors, so that each may carry half of the divisor's logarithm.
  const logOfAllOrders =
    (logFactorials[above + below] as number) -
    (logFactorials[above] as number) -
    (logFactorials[below] as number);
  const choose = (from: number, take: number): number =>
    take < 0 || take > from
      ? 0
      : Math.exp(
          (logFactorials[from] as number) -
            (logFactorials[take] as number) -
            (logFactorials[from - take] as number) -
            logOfAllOrders / 2,
        );
  let chance = 0;
  for (let count = 2; count <= runs; count += 1) {
    const half = Math.floor(count / 2);
    chance +=
      count % 2 === 0
        ? 2 * choose(above - 1, half - 1) * choose(below - 1, half - 1)
        : choose(above - 1, half) * choose(below - 1, half - 1) +
          choose(above - 1, half - 1) * choose(below - 1, half);
  }
  return Math.min(1, chance);
};

/** Logarithms, because factorials of a long log do not fit a double. */
const logFactorialsTo = (largest: number): readonly number[] => {
  const logs = [0];
  for (let value = 1; value <= largest; value += 1) {
    logs.push((logs[value - 1] as number) + Math.log(value));
  }
  return logs;
};
