import { Sampler, uniformStream, type Varying } from "../../sim/maths/random/index.ts";

/** Twenty cycle times in seconds, invented. */
export const CYCLES: readonly number[] = Object.freeze([
  6.2, 7.9, 5.1, 8.8, 6.7, 5.9, 10.4, 7.1, 6.0, 4.6, 9.3, 6.5, 7.4, 5.5, 12.1, 6.9, 5.3, 8.1, 7.0, 6.4,
]);

/** Minutes between failures, invented: nine that ended, three of machines that still ran when the study ended at 600. */
export const UPTIMES = Object.freeze({
  ended: Object.freeze([310, 95, 520, 47, 205, 410, 150, 260, 75]),
  open: Object.freeze([600, 600, 600]),
});

/** So many times of a law, the same for the same seed and number. */
export function drawnTimes(law: Varying, count: number, seed: string, replication = 0): number[] {
  const sampler = new Sampler(law, uniformStream(seed, replication, JSON.stringify(law), "times"));
  return Array.from({ length: count }, () => sampler.draw());
}
