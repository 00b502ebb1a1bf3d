/**
 * A time as phases passed one after another, each exponential: `start[p]` is the chance to begin with phase p, `rate[p]`
 * its rate per second, `onward[p]` the chance that phase p + 1 follows it (else the time is over).
 */
export interface PhaseTime {
  start: number[];
  rate: number[];
  onward: number[];
}

/** What a phase stands for. Work slows down when only some of the positions can work; all else takes its time. */
export const WORK = 0;

/** Waiting for the rest of the line that works. */
export const SHORT = 1;

/** Repairs of its own, and waiting for the rest of the line that is down. */
export const LONG = 2;

/** One side of a pair: a head passes phases, each exponential, until none follows. */
export interface PairServer {
  kind: number[];
  /** Per second. */
  rate: number[];
  /** Phases to begin with, with their chances. */
  start: NextPhase[];
  /** By phase: what may follow; what is missing to 1 completes the head. */
  next: NextPhase[][];
  /** By phase: the chance that nothing follows. */
  ends: number[];
}

export interface NextPhase {
  phase: number;
  chance: number;
}

/** What happens to some heads: with which chance, and for how many seconds on the average. */
export interface Chance {
  chance: number;
  seconds: number;
}

/** The work of a station on one head. */
export interface HeadWork {
  /** With every position at work. */
  seconds: number;
  squaredCv: number;
  /** Breakdowns. */
  stops: Chance[];
}

/** Waiting that the rest of the line puts upon a station. */
export interface Delay {
  short: Chance;
  long: Chance;
}

export const NO_DELAY: Delay = { short: { chance: 0, seconds: 0 }, long: { chance: 0, seconds: 0 } };

/** The station upstream of a pair's buffer waits for heads first, the one downstream for a place last. */
export function pairServer(
  work: HeadWork,
  delay: Delay,
  side: "upstream" | "downstream",
  leastSquaredCv: number,
): PairServer {
  const time = phaseTime(work.seconds, work.squaredCv, leastSquaredCv);
  const stops = work.stops.map((stop) => ({ ...stop, kind: LONG }));
  const delays = [
    { ...delay.short, kind: SHORT },
    { ...delay.long, kind: LONG },
  ].filter(({ chance, seconds }) => chance > 0 && seconds > 0);
  return side === "upstream" ? assemble([delays], time, [stops]) : assemble([], time, [stops, delays]);
}

type Branch = Chance & { kind: number };

type Placed = Branch & { phase: number };

/** One of each group, or none of it; in between the work. */
function assemble(before: Branch[][], time: PhaseTime, after: Branch[][]): PairServer {
  const placedBefore = place(before, 0);
  const firstWork = before.flat().length;
  const placedAfter = place(after, firstWork + time.rate.length);
  const work = time.start.map((chance, phase) => ({ phase: firstWork + phase, chance }));
  const all = [...placedBefore.flat(), ...placedAfter.flat()];
  const groups = [...placedBefore, ...placedAfter];
  const server: PairServer = { kind: [], rate: [], start: entry(placedBefore, work), next: [], ends: [] };
  for (const { phase, seconds, kind } of all) {
    const group = groups.findIndex((members) => members.some((member) => member.phase === phase));
    const isBefore = group < placedBefore.length;
    server.kind[phase] = kind;
    server.rate[phase] = 1 / seconds;
    server.next[phase] = isBefore ? entry(placedBefore.slice(group + 1), work) : entry(groups.slice(group + 1), []);
  }
  const afterWork = entry(placedAfter, []);
  time.rate.forEach((rate, phase) => {
    const goesOn = time.onward[phase]!;
    server.kind[firstWork + phase] = WORK;
    server.rate[firstWork + phase] = rate;
    server.next[firstWork + phase] = [
      { phase: firstWork + phase + 1, chance: goesOn },
      ...scaled(afterWork, 1 - goesOn),
    ].filter(({ chance }) => chance > 0);
  });
  server.ends = server.next.map((ways) => completing(ways));
  return server;
}

/** Without the rounding that sums of chances leave. */
function completing(ways: readonly NextPhase[]): number {
  const goesOn = ways.reduce((sum, { chance }) => sum + chance, 0);
  return goesOn > 1 - 1e-12 ? 0 : 1 - goesOn;
}

function place(groups: readonly Branch[][], first: number): Placed[][] {
  let phase = first;
  return groups.map((group) => group.map((branch) => ({ ...branch, phase: phase++ })));
}

/** Where a head goes that has these groups before it, and `last` after them. */
function entry(groups: readonly Placed[][], last: readonly NextPhase[]): NextPhase[] {
  const [group, ...rest] = groups;
  if (group === undefined) return last.filter(({ chance }) => chance > 0);
  const none = 1 - group.reduce((sum, { chance }) => sum + chance, 0);
  return [...group.map(({ phase, chance }) => ({ phase, chance })), ...scaled(entry(rest, last), none)];
}

function scaled(ways: readonly NextPhase[], factor: number): NextPhase[] {
  return ways.map(({ phase, chance }) => ({ phase, chance: chance * factor }));
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
