/**
 * A time as phases passed one after another, each exponential: `start[p]` is the chance to begin with phase p, `rate[p]`
 * its rate per second, `onward[p]` the chance that phase p + 1 follows it (else the time is over).
 */
export interface PhaseTime {
  start: number[];
  rate: number[];
  onward: number[];
}

/**
 * The phases of a time with this mean (seconds, above 0) and squared coefficient of variation. Below 1 a mixture of k - 1
 * and k equal phases (Tijms 1986, Stochastic Modelling and Analysis; from memory), at 1 or more two phases (Marie 1980; from memory).
 * Both match mean and variation exactly, but for variations under `least`, which are taken as that: phases without end would be needed for none.
 */
export function phaseTime(mean: number, squaredCv: number, least: number): PhaseTime {
  const scv = Math.max(squaredCv, least);
  return scv < 1 ? mixedErlang(mean, scv) : twoPhases(mean, scv);
}

function mixedErlang(mean: number, scv: number): PhaseTime {
  // Rounding must not turn 1 / (1 / 8) into nine phases.
  const k = Math.ceil(1 / scv - 1e-9);
  const shorter = k < 2 ? 0 : (k * scv - Math.sqrt(Math.max(0, k * (1 + scv) - k * k * scv))) / (1 + scv);
  const skipped = Math.max(0, shorter);
  const each = (k - skipped) / mean;
  const phases = Array.from({ length: k }, (_, phase) => phase);
  return {
    start: phases.map((phase) => (phase === 0 ? 1 - skipped : phase === 1 ? skipped : 0)),
    rate: phases.map(() => each),
    onward: phases.map((phase) => (phase < k - 1 ? 1 : 0)),
  };
}

function twoPhases(mean: number, scv: number): PhaseTime {
  return { start: [1, 0], rate: [2 / mean, 1 / (mean * scv)], onward: [0.5 / scv, 0] };
}
