import { MOMENTS } from "../../../asked/plan/plan.ts";
import { Sampler, type UniformStream, uniformStream } from "../../../maths/random/index.ts";
import { besideOf, CHAIN, type CompiledLine, DWELL, NO_LIMIT, waysOn } from "../../line/index.ts";
import { ActivePeriods } from "../binding/activePeriods.ts";
import { BindingPath } from "../binding/bindingPath.ts";
import type { HeadWatcher } from "../headWatcher.ts";
import { Recorders } from "../recorders.ts";
import { Calendar } from "./calendar.ts";
import { ChainState } from "./chainState.ts";
import { NONE } from "./codes.ts";
import { CrewState } from "./crewState.ts";
import type { Return } from "./dayUnderWay.ts";
import { Fifo } from "./fifo.ts";
import { Headcount } from "./headcount.ts";
import { ItemPool } from "./itemPool.ts";
import type { KillStopWatch } from "./killStopWatch.ts";
import { PositionState } from "./positionState.ts";
import { rowsOf } from "./rowsOf.ts";
import { EVERY_MOMENT, type StageDraws, StageState } from "./stageState.ts";
import { StunnedState } from "./stunnedState.ts";
import { TallyBuilder } from "./tallyBuilder.ts";
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
  /** Write down the stops of the kill line, where the plan has one. Default false. */
  killStops?: boolean;
}

/**
 * Everything that changes while a day runs: an object for each stage, position, chain, crew and item, and columns indexed
 * like the compiled line's tables for what is asked for less often. The functions that change it stand in files of their
 * own, one for each kind of thing that happens; this class only sets it up.
 */
export class DayState {
  readonly line: CompiledLine;
  /** Tables of the line, at hand: much that happens looks into them. */
  readonly stages: CompiledLine["stages"];
  readonly slots: CompiledLine["slots"];
  readonly gates: CompiledLine["gates"];
  readonly vessels: CompiledLine["vessels"];
  readonly failures: CompiledLine["failures"];
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
  /** The stage that takes heads from the supply. */
  readonly hanging: StageState;
  /** Stands for the empty crate at the hanging point where positions wait for a place; and those that wait for one there. */
  readonly emptyCrate: PositionState;
  readonly hangingWaiters = new Waiters<PositionState>();

  // One row per failure unit.
  readonly uptimeLeft: Float64Array;
  readonly unitRunStart: Float64Array;
  readonly unitDown: Int8Array;
  /** Of the stages whose working its uptime counts: those that work now. */
  readonly unitRunning: Int32Array;
  readonly unitStops: Int32Array;
  readonly unitDownSince: Float64Array;
  readonly unitDownSeconds: Float64Array;
  readonly uptime: Sampler[];
  readonly repair: Sampler[];

  // Gates, chains, vessels, products.
  /** By gate: heads between its ends. */
  readonly between: readonly Headcount[];
  readonly gateOpened: Int8Array;
  /** Something opened during this event: held stages have to look again. */
  opened = false;
  /** Stations on the protected stretch that nobody may work at now by plan. */
  unmanned = 0;
  /** People are to be sent where they are needed when all that happens at this instant is over; crewed stages that call. */
  unsent = false;
  readonly calling: StageState[] = [];
  callingCount = 0;
  /** Stages put off starting until the batch under way has come off, and those that did. */
  defers = false;
  readonly deferred: StageState[] = [];
  deferredCount = 0;
  /** By job (jobs.ts): the crew of which somebody is at it, or -1, and the breaks that it had begun by then. */
  readonly jobCrew: Int32Array;
  readonly jobBreaksSeen: Int32Array;
  /** Calendar rows that wait for the protected stretch to be empty. */
  readonly heldRows: number[] = [];
  readonly returns: Return[] = [];
  readonly vesselKg: Float64Array;
  readonly vesselMax: Float64Array;
  readonly vesselBusy: Int8Array;
  readonly vesselTaken: Float64Array;
  readonly vesselEmptied: Float64Array;
  readonly vesselSpilled: Float64Array;
  readonly vesselFullSince: Float64Array;
  readonly vesselFullSeconds: Float64Array;
  readonly productKg: Float64Array;
  readonly outKg: Float64Array;

  // Supply.
  /** By load: 1 when its lorry comes today. */
  readonly loadComes: Uint8Array;
  /** Loads that come, in order of arrival; and the arrival times. */
  readonly loadOrder: Int32Array;
  readonly loadArrived: Float64Array;
  readonly loadUnloaded: Float64Array;
  readonly loadEmptied: Float64Array;
  readonly loadWashed: Float64Array;
  readonly loadLeft: Float64Array;
  readonly loadHeadsLeft: Int32Array;
  readonly loadCratesAboard: Int32Array;
  /** Crates of the load that are not back, washed and ready. */
  readonly loadCratesDirty: Int32Array;
  readonly loadCratesBack: Int32Array;
  readonly deadDraw: (UniformStream | null)[];
  readonly liveWeight: Sampler[];
  /** Loads that wait for crates of the fleet; lorries that wait for their empty crates. */
  readonly loadsWaiting: number[] = [];
  readonly lorries: number[] = [];
  fleetFree: number;
  cleanCrates = 0;
  /** Empty crates between the hanging point and the lorries. */
  emptyCrates = 0;
  /** Crates at the hanging point, the first being emptied. */
  readonly atHanging: Fifo;
  interarrival: Sampler | null = null;
  calendarRow = 0;
  loadRow = 0;
  arrived = 0;
  hung = 0;
  turnedAway = 0;
  /** Heads not yet hung that will still come or are here. */
  toHang = 0;
  hangingClosed = false;

  // Heads on the line and out of it.
  headsOnLine = 0;
  readonly out: Float64Array;
  /** By section. */
  readonly inSection: readonly Headcount[];
  readonly beyond: Float64Array;
  readonly limitTallies: TallyBuilder[];
  readonly timeInSystem = new TallyBuilder();
  /** The care for stunned heads, where the plan has one. */
  readonly stunned: StunnedState | null;
  readonly recorders: Recorders | null;
  readonly path: BindingPath | null;
  readonly active: ActivePeriods | null;
  /** Put there by startDay: what it looks at is this state. */
  killStops: KillStopWatch | null = null;

  constructor(line: CompiledLine, options: DayOptions) {
    const { stages, positions, failures, crews, gates, chains, vessels, supply } = line;
    const stream = (owner: string, purpose: string) =>
      uniformStream(options.seed, options.replication, owner, purpose, options.antithetic ?? false);
    this.line = line;
    this.stages = stages;
    this.slots = line.slots;
    this.gates = gates;
    this.vessels = vessels;
    this.failures = failures;
    this.points = line.points;
    this.limits = line.limits;
    this.options = options;
    this.calendar = new Calendar(line.slots.count);
    this.pool = new ItemPool(line.limits.count + 2 * line.points.spans);

    const tellsAll = options.perHead === true || options.watcher !== undefined;
    this.stageAt = stages.names.map((name, stage) => {
      const draws = drawsOf(line, stage, (purpose) => stream(name, purpose));
      return new StageState(line, stage, draws, tellsAll ? EVERY_MOMENT : wantedMoments(line, stage, options));
    });
    this.positionAt = this.stageAt.flatMap((stage) => stage.positions);
    this.chainAt = Array.from({ length: chains.count }, (_, chain) => new ChainState(line, chain, this.stageAt));
    this.crewAt = crews.names.map(
      (name, crew) => new CrewState(line, crew, this.stageAt, () => stream(name, "absent")),
    );
    for (const stage of this.stageAt) stage.crews = crewsOf(line, stage.index, this.crewAt);
    this.hanging = this.stageAt[stages.hanging]!;
    tellBeside(line, this.stageAt);
    this.emptyCrate = new PositionState(line, this.hanging, positions.count);

    const unitStreams = (purpose: string) => (unit: number) => stream(unitName(line, unit), purpose);
    const uptimeStream = unitStreams("uptime");
    const repairStream = unitStreams("repair");
    this.uptime = failures.uptime.map((varying, unit) => new Sampler(varying, uptimeStream(unit)));
    this.repair = failures.repair.map((varying, unit) => new Sampler(varying, repairStream(unit)));
    this.uptimeLeft = Float64Array.from(this.uptime, (sampler) => sampler.draw());
    this.unitRunStart = new Float64Array(failures.count);
    this.unitDown = new Int8Array(failures.count);
    this.unitRunning = new Int32Array(failures.count);
    this.unitStops = new Int32Array(failures.count);
    this.unitDownSince = new Float64Array(failures.count);
    this.unitDownSeconds = new Float64Array(failures.count);
    const jobs = failures.count + vessels.count + 1;
    this.jobCrew = new Int32Array(jobs).fill(NONE);
    this.jobBreaksSeen = new Int32Array(jobs);

    this.between = Array.from({ length: gates.count }, () => new Headcount());
    this.gateOpened = new Int8Array(gates.count);
    this.vesselKg = new Float64Array(vessels.count);
    this.vesselMax = new Float64Array(vessels.count);
    this.vesselBusy = new Int8Array(vessels.count);
    this.vesselTaken = new Float64Array(vessels.count);
    this.vesselEmptied = new Float64Array(vessels.count);
    this.vesselSpilled = new Float64Array(vessels.count);
    this.vesselFullSince = new Float64Array(vessels.count).fill(Number.NaN);
    this.vesselFullSeconds = new Float64Array(vessels.count);
    this.productKg = new Float64Array(line.productNames.length);
    this.outKg = new Float64Array(line.destinationNames.length);

    const loads = supply.kind === "loads" ? supply.loads : [];
    this.loadArrived = Float64Array.from(loads, (load) => {
      const delay = load.delay === null ? 0 : new Sampler(load.delay, stream(load.name, "delay")).draw();
      return load.seconds + delay;
    });
    this.loadComes = Uint8Array.from(loads, ({ name, comesShare }) =>
      comesShare === 1 || stream(name, "comes").next() < comesShare ? 1 : 0,
    );
    this.loadOrder = Int32Array.from([...loads.keys()].filter((load) => this.loadComes[load])).sort(
      (a, b) => this.loadArrived[a]! - this.loadArrived[b]! || a - b,
    );
    this.loadUnloaded = new Float64Array(loads.length).fill(Number.NaN);
    this.loadEmptied = new Float64Array(loads.length).fill(Number.NaN);
    this.loadWashed = new Float64Array(loads.length).fill(Number.NaN);
    this.loadLeft = new Float64Array(loads.length).fill(Number.NaN);
    this.loadHeadsLeft = Int32Array.from(loads, (load) => load.crates * load.headsPerCrate);
    this.loadCratesAboard = Int32Array.from(loads, (load) => load.crates);
    this.loadCratesDirty = Int32Array.from(loads, (load) => load.crates);
    this.loadCratesBack = new Int32Array(loads.length);
    this.deadDraw = loads.map((load) => (load.deadOnArrivalShare > 0 ? stream(load.name, "dead on arrival") : null));
    this.liveWeight =
      supply.kind === "loads"
        ? loads.map((load) => new Sampler(load.liveWeightKg, stream(load.name, "live weight")))
        : [new Sampler(supply.liveWeightKg, stream("", "live weight"))];
    this.fleetFree = supply.kind === "loads" ? supply.fleet : NO_LIMIT;
    this.atHanging = new Fifo();
    if (supply.kind === "stream") this.interarrival = new Sampler(supply.interarrival, stream("", "arrival"));

    this.out = new Float64Array(line.destinationNames.length);
    this.inSection = line.sectionNames.map(() => new Headcount());
    this.beyond = new Float64Array(line.limits.count);
    this.limitTallies = line.limits.names.map(() => new TallyBuilder());
    this.stunned = line.stunned === null ? null : new StunnedState(line, this.stageAt);
    this.recorders = Recorders.wanted(options, line);
    this.path = options.binding ? new BindingPath(line) : null;
    this.active = options.binding ? activePeriodsOf(line) : null;
    this.now = 0;
    this.watchedFrom = 0;
    this.workFinish = 0;
    this.liveKg = 0;
    this.carcassLiveKg = 0;
  }
}

function activePeriodsOf({ positions, stages }: CompiledLine): ActivePeriods {
  const kindOf = (stage: number) => stages.kind[stage]!;
  return new ActivePeriods(Array.from(positions.stage, (stage) => kindOf(stage) !== DWELL && kindOf(stage) !== CHAIN));
}

/** Moments of a stage, one bit each, that the record of the kill line's stops has to be told of. */
function wantedMoments({ killLine }: CompiledLine, stage: number, { killStops = false }: DayOptions): number {
  if (!killStops || killLine === null) return 0;
  const isMarked = (moment: number) => killLine.marks[stage * MOMENTS.length + moment]! > 0;
  return MOMENTS.reduce((bits, _, moment) => bits | (isMarked(moment) ? 1 << moment : 0), 0);
}

/** Tells every stage which ones stand beside it, for the heads that it sends aside. */
function tellBeside(line: CompiledLine, stageAt: readonly StageState[]): void {
  const senders = besideOf(line, waysOn(line));
  for (const stage of stageAt) stage.beside = stageAt.filter(({ index }) => senders[index]!.includes(stage.index));
}

function crewsOf({ stages }: CompiledLine, stage: number, crewAt: readonly CrewState[]): CrewState[] {
  return Array.from(rowsOf(stages.crew, stages.crewFrom, stage), (crew) => crewAt[crew]!);
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
 * Names a failure unit by stage, failure and position within the stage, one that stops several stages by its name alone: the
 * same wherever else the plan changes.
 */
function unitName(line: CompiledLine, unit: number): string {
  if (unit >= line.failures.sharedFrom) return JSON.stringify(["shared", line.failures.names[unit]]);
  const stage = line.failures.stage[unit]!;
  const within = line.failures.positionFrom[unit]! - line.stages.positionFrom[stage]!;
  return JSON.stringify([line.stages.names[stage], line.failures.names[unit], within]);
}
