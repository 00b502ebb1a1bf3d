/** Closed forms of queueing theory, each with the name it is published under. Service rate 1 unless said otherwise. */

/** Share of arrivals lost by `servers` places without a queue at offered load `load` (Erlang 1917; stable recursion). */
export function erlangB(servers: number, load: number): number {
  let lost = 1;
  for (let n = 1; n <= servers; n++) lost = (load * lost) / (n + load * lost);
  return lost;
}

/** Share of arrivals that wait, load < servers (Erlang 1917). */
export function erlangC(servers: number, load: number): number {
  const lost = erlangB(servers, load);
  return lost / (1 - (load / servers) * (1 - lost));
}

/** Mean number waiting, M/G/1 with mean service 1 (Pollaczek 1930, Khinchine 1932). */
export function pollaczekKhinchine(arrivals: number, cv: number): number {
  return (arrivals * arrivals * (1 + cv * cv)) / (2 * (1 - arrivals));
}

/** M/M/1 with `places` in all: probabilities of 0 .. places heads present (birth and death). */
export function limitedQueue(load: number, places: number): number[] {
  const weights = Array.from({ length: places + 1 }, (_, n) => load ** n);
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}

/** Machines down, 0 .. machines, with so many repairers (Palm 1947; Feller vol. 1): birth and death. */
export function machineRepair(machines: number, failure: number, repair: number, repairers: number): number[] {
  const weights = [1];
  for (let down = 1; down <= machines; down++) {
    weights.push((weights[down - 1]! * (machines - down + 1) * failure) / (Math.min(down, repairers) * repair));
  }
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}

export interface BreakingServer {
  arrivals: number;
  failure: number;
  repair: number;
}

/**
 * Mean number present, M/M/1 (service rate 1) whose server breaks by the calendar, busy or idle, work resumed. Derived
 * here from the generating functions of the two-state chain: with a = failure / repair and spare rate
 * s = 1 - arrivals (1 + a), L = (arrivals (1 + a) + arrivals^2 a / repair) / s + arrivals a / ((1 + a) repair).
 * Model: Avi-Itzhak and Naor 1963.
 */
export function presentWithCalendarBreakdowns({ arrivals, failure, repair }: BreakingServer): number {
  const a = failure / repair;
  const spare = 1 - arrivals * (1 + a);
  return (arrivals * (1 + a) + (arrivals ** 2 * a) / repair) / spare + (arrivals * a) / ((1 + a) * repair);
}

/** The same with breakdowns on running time only: Pollaczek-Khinchine on the completion time (service and its repairs). */
export function presentWithRunningBreakdowns({ arrivals, failure, repair }: BreakingServer): number {
  const stretch = 1 + failure / repair;
  const secondMoment = 2 * stretch ** 2 + (2 * failure) / repair ** 2;
  return arrivals * stretch + (arrivals ** 2 * secondMoment) / (2 * (1 - arrivals * stretch));
}

/** Mean present, M^X/M/1 with bulks of exactly `size` heads and load rho (Gross and Harris, from memory): rho (size + 1) / (2 (1 - rho)). */
export function presentWithBulks(load: number, size: number): number {
  return (load * (size + 1)) / (2 * (1 - load));
}

/** Mean of a distribution over 0, 1, 2, ... */
export function meanOfDistribution(probabilities: readonly number[]): number {
  return probabilities.reduce((sum, probability, n) => sum + n * probability, 0);
}

/**
 * Throughput of M/D/1 with `places` in all, arrival rate and service rate 1, from the chain embedded at departures
 * (Keilson 1966; Gross and Harris): the server is idle for one mean interarrival after a departure that leaves nobody.
 */
export function limitedConstantService(places: number): number {
  const arrivals = Array.from({ length: places }, (_, k) => Math.exp(-1) / factorial(k));
  // Weights of 0 .. places - 1 left behind, from the balance of the embedded chain, first one 1.
  const weights = [1];
  for (let left = 0; left < places - 1; left++) {
    let flow = weights[left]! - weights[0]! * arrivals[left]!;
    for (let before = 1; before <= left; before++) flow -= weights[before]! * arrivals[left - before + 1]!;
    weights.push(flow / arrivals[0]!);
  }
  const none = 1 / weights.reduce((sum, weight) => sum + weight, 0);
  return 1 / (1 + none);
}

function factorial(n: number): number {
  return n < 2 ? 1 : n * factorial(n - 1);
}
