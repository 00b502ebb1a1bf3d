/** Times up to which the full number of simulated samples is drawn. */
const MANY = 1000;

/** How many samples of `n` times are simulated when `wanted` are: fewer of large ones, 99 at least where so many are wanted. */
export function simulatedSamples(wanted: number, n: number): number {
  return n <= MANY ? wanted : Math.max(Math.min(wanted, 99), Math.floor((wanted * MANY) / n));
}
