import { steadyState } from "./markovChain.ts";

/** Mean present, M^X/M/1 (service rate 1) with bulks of exactly `size`, from its chain cut off where nothing is left. */
export function bulkQueue(load: number, size: number): number {
  const most = 60 * size;
  const from: number[] = [];
  const to: number[] = [];
  const rate: number[] = [];
  const jump = (before: number, after: number, speed: number) => {
    from.push(before);
    to.push(after);
    rate.push(speed);
  };
  for (let present = 0; present <= most; present++) {
    if (present + size <= most) jump(present, present + size, load / size);
    if (present > 0) jump(present, present - 1, 1);
  }
  return steadyState(most + 1, from, to, rate).reduce((sum, probability, present) => sum + present * probability, 0);
}
