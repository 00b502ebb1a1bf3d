import { MOMENTS } from "../../../asked/plan/plan.ts";
import { Sampler, type UniformStream, uniformStream } from "../../../maths/random/index.ts";
import { besideOf, CHAIN, type CompiledLine, type CompiledLoad, DWELL, NO_LIMIT, waysOn } from "../../line/index.ts";
import { ActivePeriods } from "../binding/activePeriods.ts";
import { BindingPath } from "../binding/bindingPath.ts";
import type { HeadWatcher } from "../headWatcher.ts";
import { Recorders } from "../recorders.ts";
import { BreakdownState } from "./breakdownState.ts";
import { Calendar } from "./calendar.ts";
import { ChainState } from "./chainState.ts";
import { NONE } from "./codes.ts";
import { CrewState, stepIn } from "./crewState.ts";
import type { Return } from "./dayUnderWay.ts";
import { Fifo } from "./fifo.ts";
import { Headcount } from "./headcount.ts";
import { ItemPool } from "./itemPool.ts";
import type { KillStopWatch } from "./killStopWatch.ts";
import { dueLoads, LoadState } from "./loadState.ts";
import { PositionState } from "./positionState.ts";
import { rowsOf } from "./rowsOf.ts";
import { EVERY_MOMENT, type StageDraws, StageState } from "./stageState.ts";
import { StunnedState } from "./stunnedState.ts";
import { TallyBuilder } from "./tallyBuilder.ts";
import { VesselState } from "./vesselState.ts";
import { Waiters } from "./waiters.ts";

export * from "./codes.ts";

export interface DayOptions {
  /** Any text; with `replication` it fixes every draw. */
  seed: string;
  replication: number;
  /** Mirror every uniform (u -> 1 - u). Default false. */
  antithetic?: boolean;
  /** Default "none". */
  traces?: "none" | "binned" | "exact";
  /** Check conservation after every event; slow. Default false. */
  check?: boolean;
  /** Forget everything counted before so many carcasses are out. Default 0. */
  warmUpHeads?: number;
  /** Keep the passing times of every head at every stage. Default false. */
  perHead?: boolean;
  /** Told of every head as it goes along; not together with `perHead`. Default: nobody is. */
  watcher?: HeadWatcher;
  /** A day with more events is given up. Default: any number. */
  mostEvents?: number;
  /**
   * A day with more heads and crates in the plant at once is given up. Default 2 million (600 MB), where they are kept one
   * by one: on a line of single machines those that wait are no more than a time each.
   */
  mostPresent?: number;
  /** Tell what the day's end was owed to, and which station was the bottleneck when. Default false. */
  binding?: boolean;
  /** Another day follows: crates that came are brought into lairage before the day is over. Default false. */
  goesOn?: boolean;
  /** Write down the stops of the kill line, where the plan has one. Default false. */
  killStops?: boolean;
}

/**
 * Everything that changes while a day runs: an object for each stage, position, chain, crew, vessel, load, breakdown and
 * item, and columns indexed like the compiled line's tables for the few figures of gates, limits, jobs and destinations. The functions that change it stand in files of their
 * own, one for each kind of thing that happens; this class only sets it up.
 */
export class DayState {
  readonly line: CompiledLine;
  /** Tables of the line, at hand: much that happens looks into them. */
  readonly stages: CompiledLine["stages"];
  readonly slots: CompiledLine["slots"];
  readonly gates: CompiledLine["gates"];
  readonly points: CompiledLine["points"];
  readonly limits: CompiledLine["limits"];
  readonly options: DayOptions;
  readonly calendar: Calendar;
  readonly pool: ItemPool;
  /*
   * Sums and clocks that are not whole numbers begin as NaN, and as 0 from the constructor's end on: so the runtime takes
   * them for what they are from the start, and does not throw away in the middle of the first day what it has compiled.
   */
  /** Seconds after the day's start. */
  now = Number.NaN;
  /** Start of the time watched: 0, or the end of the warm-up. */
  watchedFrom = Number.NaN;
  /** When the last work on a head at a station ended. */
  workFinish = Number.NaN;
  /** Live weight of the heads hung, and of those that became carcasses. */
  liveKg = Number.NaN;
  carcassLiveKg = Number.NaN;
  events = 0;
  finished = false;

  /** By index. */
  readonly stageAt: readonly StageState[];
  readonly positionAt: readonly PositionState[];
  readonly chainAt: readonly ChainState[];
  readonly crewAt: readonly CrewState[];
  readonly vesselAt: readonly VesselState[];
  /** Today's loads by index, then those of days before of which something is left. */
  readonly loadAt: LoadState[];
  readonly breakdownAt: readonly BreakdownState[];
  /** The stage that takes heads from the supply. */
  readonly hanging: StageState;
  /** Stands for the empty crate at the hanging point where positions wait for a place; and those that wait for one there. */
  readonly emptyCrate: PositionState;
  readonly hangingWaiters = new Waiters<PositionState>();

  // Gates, people, products.
  /** By gate: heads between its ends. */
  readonly headsInGate: readonly Headcount[];
  readonly gateOpened: Int8Array;
  /** A gate opened, or a chain may move again, during this event: held stages and chains have to look again. */
  mustSettle = false;
  /** Stations on the protected stretch that nobody may work at now by plan. */
  unmanned = 0;
  /** People are to be sent where they are needed when all that happens at this instant is over; crewed stages that call. */
  unsent = false;
  readonly calling: StageState[] = [];
  callingCount = 0;
  /** Stages put off starting until the batch under way has come off; and those that did. */
  defersStarts = false;
  readonly deferred: StageState[] = [];
  deferredCount = 0;
  /** By job (jobs.ts): the crew of which somebody is at it, or -1, and the breaks that it had begun by then. */
  readonly jobCrew: Int32Array;
  readonly jobBreaksSeen: Int32Array;
  /** Calendar rows that wait for the protected stretch to be empty. */
  readonly heldRows: number[] = [];
  readonly returns: Return[] = [];
  readonly productKg: Float64Array;
  readonly outKg: Float64Array;

  // Supply.
  /** Loads that come today, in the order in which they are due; how many of them have been due. */
  readonly loadsDue: LoadState[];
  loadRow = 0;
  /** Live weights of the heads of a stream or of a supply without end; loads have their own. */
  readonly liveWeight: Sampler | null;
  /** Loads that wait for crates of the fleet; lorries that wait for their empty crates. */
  readonly loadsWaiting: LoadState[] = [];
  readonly lorries: LoadState[] = [];
  fleetFree: number;
  /** Some load is withdrawn. */
  withdraws = false;
  cleanCrates = 0;
  /** Empty crates between the hanging point and the lorries. */
  emptyCrates = 0;
  /** Crates at the hanging point, the first being emptied. */
  readonly atHanging = new Fifo();
  readonly interarrival: Sampler | null;
  /** The calendar's next row. */
  calendarRow = 0;
  arrived = 0;
  hung = 0;
  turnedAway = 0;
  /** What the day before left: heads in crates; heads on the line, those among them that were not hung, and the kilograms of all. */
  keptCrated = 0;
  keptHeads = 0;
  keptOutside = 0;
  keptKg = 0;
  /** Heads not yet hung that will still come or are here. */
  toHang = 0;
  hangingClosed = false;

  // Heads on the line and out of it.
  headsOnLine = 0;
  readonly out: Float64Array;
  /** By section. */
  readonly inSection: readonly Headcount[];
  /** By limit: heads out of it. */
  readonly headsOverLimit: Float64Array;
  readonly limitTallies: TallyBuilder[];
  readonly timeInSystem = new TallyBuilder();
  /** The care for stunned heads, where the plan has one. */
  readonly stunned: StunnedState | null;
  readonly recorders: Recorders | null;
  readonly path: BindingPath | null;
  readonly active: ActivePeriods | null;
  /** Told the weight of every carcass that leaves; only where orders wait for them. */
  leaves: ((kilograms: number) => void) | null = null;
  /** Put there by startDay: what it looks at is this state. */
  killStops: KillStopWatch | null = null;

  /** `goesOn`: something may be there when the day begins. */
  constructor(line: CompiledLine, options: DayOptions, goesOn = false) {
    const { stages, positions, breakdowns, crews, gates, chains, vessels, supply } = line;
    const stream = (owner: string, purpose: string) =>
      uniformStream(options.seed, options.replication, owner, purpose, options.antithetic ?? false);
    this.line = line;
    this.stages = stages;
    this.slots = line.slots;
    this.gates = gates;
    this.points = line.points;
    this.limits = line.limits;
    this.options = options;
    this.calendar = new Calendar(line.slots.count);
    this.pool = new ItemPool(line.limits.count + 2 * line.points.spans);

    this.stageAt = stages.names.map((name, stage) => {
      const draws = drawsOf(line, stage, (purpose) => stream(name, purpose));
      return new StageState(line, stage, draws, wantedMoments(line, stage, options));
    });
    this.positionAt = this.stageAt.flatMap((stage) => stage.positions);
    this.chainAt = Array.from({ length: chains.count }, (_, chain) => new ChainState(line, chain, this.stageAt));
    this.crewAt = crews.names.map(
      (name, crew) => new CrewState(line, crew, this.stageAt, () => stream(name, "absent")),
    );
    stepIn(line, this.crewAt);
    this.vesselAt = vessels.names.map((_, vessel) => new VesselState(line, vessel, this.stageAt));
    this.breakdownAt = breakdowns.names.map((_, unit) => {
      const name = unitName(line, unit);
      return new BreakdownState(line, unit, this, (purpose) => stream(name, purpose));
    });
    for (const stage of this.stageAt) introduce(line, stage, this);
    tellBeside(line, this.stageAt);
    this.hanging = this.stageAt[stages.hanging]!;
    this.emptyCrate = new PositionState(line, this.hanging, positions.count);

    const jobs = breakdowns.count + vessels.count + 1;
    this.jobCrew = new Int32Array(jobs).fill(NONE);
    this.jobBreaksSeen = new Int32Array(jobs);
    this.headsInGate = gates.names.map(() => new Headcount());
    this.gateOpened = new Int8Array(gates.count);
    this.productKg = new Float64Array(line.productNames.length);
    this.outKg = new Float64Array(line.destinationNames.length);

    this.loadAt = loadsOf(supply).map((load, index) => {
      const place = { index, destinations: line.destinationNames.length };
      return new LoadState(load, place, (purpose) => stream(load.name, purpose));
    });
    this.loadsDue = dueLoads(this.loadAt);
    this.withdraws = this.loadAt.some(({ withdrawnAt }) => withdrawnAt !== NONE);
    this.liveWeight = supply.kind === "loads" ? null : new Sampler(supply.liveWeightKg, stream("", "live weight"));
    this.fleetFree = supply.kind === "loads" ? supply.fleet : NO_LIMIT;
    this.interarrival = supply.kind === "stream" ? new Sampler(supply.interarrival, stream("", "arrival")) : null;

    this.out = new Float64Array(line.destinationNames.length);
    this.inSection = line.sectionNames.map(() => new Headcount());
    this.headsOverLimit = new Float64Array(line.limits.count);
    this.limitTallies = line.limits.names.map(() => new TallyBuilder());
    this.stunned = line.stunned === null ? null : new StunnedState(line, this.stageAt);
    this.recorders = Recorders.wanted(options, line);
    this.path = options.binding ? new BindingPath(line, goesOn) : null;
    this.active = options.binding ? activePeriodsOf(line) : null;
    this.now = 0;
    this.watchedFrom = 0;
    this.workFinish = 0;
    this.liveKg = 0;
    this.carcassLiveKg = 0;
  }
}

function loadsOf(supply: CompiledLine["supply"]): CompiledLoad[] {
  return supply.kind === "loads" ? supply.loads : [];
}

/** Tells the stage which crews serve it, which vessels stop it, and which breakdowns go by its work. */
function introduce({ stages, breakdowns, positions }: CompiledLine, stage: StageState, day: DayState): void {
  const { crewAt, vesselAt, breakdownAt } = day;
  stage.crews = Array.from(rowsOf(stages.crew, stages.crewFrom, stage.index), (crew) => crewAt[crew]!);
  stage.vessels = Array.from(rowsOf(stages.vessel, stages.vesselFrom, stage.index), (vessel) => vesselAt[vessel]!);
  const clocks = rowsOf(breakdowns.stationClock, breakdowns.stationClockFrom, stage.index);
  stage.clocks = Array.from(clocks, (unit) => breakdownAt[unit]!);
  const { ownBreakdownFrom } = positions;
  for (const position of stage.positions) {
    position.ownBreakdowns = breakdownAt.slice(ownBreakdownFrom[position.index], ownBreakdownFrom[position.index + 1]);
  }
}

function activePeriodsOf({ positions, stages }: CompiledLine): ActivePeriods {
  const kindOf = (stage: number) => stages.kind[stage]!;
  return new ActivePeriods(Array.from(positions.stage, (stage) => kindOf(stage) !== DWELL && kindOf(stage) !== CHAIN));
}

/** Moments of a stage, one bit each, that the table of heads or the record of the kill line's stops has to be told of. */
function wantedMoments({ killLine }: CompiledLine, stage: number, options: DayOptions): number {
  const { killStops = false, perHead = false, watcher } = options;
  if (perHead || watcher !== undefined) return EVERY_MOMENT;
  if (!killStops || killLine === null) return 0;
  const isMarked = (moment: number) => killLine.marks[stage * MOMENTS.length + moment]! > 0;
  return MOMENTS.reduce((bits, _, moment) => bits | (isMarked(moment) ? 1 << moment : 0), 0);
}

/** Tells every stage which ones stand beside it, for the heads that it sends aside. */
function tellBeside(line: CompiledLine, stageAt: readonly StageState[]): void {
  const senders = besideOf(line, waysOn(line));
  for (const stage of stageAt) stage.beside = stageAt.filter(({ index }) => senders[index]!.includes(stage.index));
}

function drawsOf({ stages }: CompiledLine, stage: number, stream: (purpose: string) => UniformStream): StageDraws {
  const travel = stages.travel[stage]!;
  const branches = stages.branchFrom[stage + 1]! > stages.branchFrom[stage]!;
  return {
    work: new Sampler(stages.work[stage]!, stream("work")),
    travel: travel === null ? null : new Sampler(travel, stream("travel")),
    branch: branches ? stream("removal") : null,
  };
}

/**
 * Names a breakdown unit by stage, breakdown and position within the stage, one that stops several stages by its name alone:
 * the same wherever else the plan changes.
 */
function unitName({ breakdowns, stages }: CompiledLine, unit: number): string {
  const name = breakdowns.names[unit]!;
  if (unit >= breakdowns.sharedFrom) return JSON.stringify(["shared", name]);
  const stage = breakdowns.stage[unit]!;
  return JSON.stringify([stages.names[stage], name, breakdowns.positionFrom[unit]! - stages.positionFrom[stage]!]);
}
