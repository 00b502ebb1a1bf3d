/** After so many simulated values beyond the one seen, its p-value is known well enough (within about 14 % of itself). */
const ENOUGH = 50;

/**
 * Monte Carlo p-value, one simulated value at a time: (beyond + 1) / (drawn + 1) after a fixed number, or beyond / drawn
 * once 50 lie beyond (Besag and Clifford 1991, Biometrika 78). Either way a true law is rejected at level alpha with
 * probability alpha at most.
 */
export class TailCount {
  readonly #seen: number;
  #drawn = 0;
  #beyond = 0;

  constructor(seen: number) {
    this.#seen = seen;
  }

  add(simulated: number): void {
    if (this.settled) return;
    this.#drawn += 1;
    if (simulated >= this.#seen) this.#beyond += 1;
  }

  get settled(): boolean {
    return this.#beyond >= ENOUGH;
  }

  get p(): number {
    return this.settled ? this.#beyond / this.#drawn : (this.#beyond + 1) / (this.#drawn + 1);
  }
}
