import { MOMENTS } from "../../../asked/plan/plan.ts";
import type { Sampler, UniformStream } from "../../../maths/random/index.ts";
import { CHAIN, type CompiledLine, DWELL, type StageColumns } from "../../line/index.ts";
import { STATES } from "../dayRecord.ts";
import type { BreakdownState } from "./breakdownState.ts";
import type { ChainState } from "./chainState.ts";
import { STARVED } from "./codes.ts";
import type { CrewState } from "./crewState.ts";
import { DwellEnds } from "./dwellEnds.ts";
import { Fifo } from "./fifo.ts";
import { Headcount } from "./headcount.ts";
import { HELD, type Item } from "./item.ts";
import { Learner } from "./learner.ts";
import { Pace } from "./pace.ts";
import { PositionState } from "./positionState.ts";
import { rowsOf } from "./rowsOf.ts";
import type { VesselState } from "./vesselState.ts";
import { Waiters } from "./waiters.ts";

/**
 * What a stage's own time needs to know of the day (see ownTime.ts): when it began and when its last head left, and its
 * position-seconds by state at those moments. Changes with the first head, with each head that leaves, and when an idle
 * stage changes its state; not with each event.
 */
class OwnHours {
  // Seconds begin as NaN: see DayState.
  /** Since when heads could reach it; NaN before. */
  from = Number.NaN;
  /** When the last head left; NaN before the first one did. */
  left = Number.NaN;
  hasBegun = false;
  /** It has ended for good. */
  isOver = false;
  /** Nobody may work here by plan: a break, a pause, hours without its crews. */
  isAway = false;
  /** Position-seconds by state: when it began; when `left` was `leftSumsAt`; at the beginning of the absence under way. */
  readonly fromSums = new Float64Array(STATES.length);
  readonly leftSums = new Float64Array(STATES.length);
  leftSumsAt = Number.NaN;
  readonly awaySums = new Float64Array(STATES.length);
  /** Position-seconds by state in earlier absences. */
  readonly away = new Float64Array(STATES.length);
}

/*
 * StageState, PositionState, ChainState, CrewState, VesselState and BreakdownState name each other, as the things do: a
 * position has its stage and the crew at work there, a stage its crews and its chain, a chain its stations. It is the one ring of imports in the house
 * (tests/structure/imports.test.ts), of types but for the positions that a stage makes.
 */
export const EVERY_MOMENT = (1 << MOMENTS.length) - 1;

/** What a stage draws; null where nothing is left to chance. */
export interface StageDraws {
  work: Sampler;
  travel: Sampler | null;
  /** Decides among removals, diversions and going on. */
  branch: UniformStream | null;
}

/**
 * One stage while a day runs: the facts of the compiled line that every event asks for (`StageColumns` explains them), and
 * all that changes. One object a stage instead of a column a figure, because an event looks at a dozen figures of
 * the same stage: so they lie together, and are found with one step each.
 */
export class StageState {
  readonly index: number;
  readonly kind: number;
  readonly next: number;
  readonly places: number;
  readonly perCycle: number;
  readonly headsPerHook: number;
  readonly people: number;
  readonly section: number;
  /** Stations on chains: first place of the window, the one after its last, and that the chain stands for who is unfinished. */
  readonly windowFrom: number;
  readonly windowTo: number;
  readonly stopsChain: boolean;
  /** Takes heads from the supply. */
  readonly isHanging: boolean;
  /** Crates pass the stages before hanging; heads the others. */
  readonly takesHeads: boolean;
  readonly gates: Int32Array;
  /** Bit by moment of a head's way through: a limit or a gate has an end there, or somebody is told of every head. */
  readonly watched: number;
  readonly branchFrom: number;
  readonly branchTo: number;
  /** A branch's share depends on the head. */
  readonly sharesVary: boolean;
  readonly productFrom: number;
  readonly productTo: number;
  // Numbers that are not whole begin as NaN: see DayState.
  readonly weightPerKg: number = Number.NaN;
  readonly weightAt: number = Number.NaN;
  readonly weightFrom: number = Number.NaN;
  readonly weightTo: number = Number.NaN;
  readonly weightElse: number;
  /** Seconds that a position takes before the first head of another lot; 0 for none. */
  readonly changeoverSeconds: number = Number.NaN;
  /** Null where its people know the work. */
  readonly learning: Learner | null;
  /** Speed by the hour; null where it is always as written. */
  readonly pace: Pace | null;
  readonly chilling: StageColumns["chilling"][number];
  readonly travelSlot: number;
  readonly positions: readonly PositionState[];
  readonly work: Sampler;
  readonly travel: Sampler | null;
  readonly branch: UniformStream | null;

  // Filled in when all of them are there: see DayState.
  /** Crews that may work here, the preferred one first. */
  crews: readonly CrewState[] = [];
  /** Vessels that stop the stage when they are full. */
  vessels: readonly VesselState[] = [];
  /** Breakdowns of the whole station, and shared ones, whose uptime goes by its working. */
  clocks: readonly BreakdownState[] = [];
  /** The chain that it is, or that it stands on. */
  chain: ChainState | null = null;
  /** Items waiting (station) or present (dwell), in order. */
  readonly queue: Fifo;
  /** Dwell stages: heads whose time is not up. */
  readonly ends = new DwellEnds();
  /** Dwell stages: heads of lots that are held. */
  heldHeads = 0;
  /** Items on their way out of the stage to the next one, in order. */
  readonly travelling: Fifo;
  /** When the last item on its way arrives: travel keeps the order. */
  lastArrival = Number.NaN;
  /** The hold for stunned heads decides when it begins one; heads are stunned here; they are stuck here. */
  readonly isHeldForStunned: boolean;
  readonly stuns: boolean;
  readonly sticks: boolean;
  /** Places taken, those reserved by travelling items included. */
  occupancy = 0;
  /** Heads (crates) that took a place and that left, so far. */
  headsEntered = 0;
  headsLeft = 0;
  /** Positions with neither work nor a breakdown; none of them before rank `idleFrom`. */
  idle: number;
  idleFrom = 0;
  /**
   * Why idle positions idle, or NONE when that is to be told anew; how many of them work is waiting for, and of how many
   * idle ones that was said.
   */
  idleState = STARVED;
  idleWanted = 0;
  idleExplained = 0;
  /** Crewed stages: looks for people when the instant is over. */
  isCalling = false;
  workingPositions = 0;
  pauses = 0;
  processed = 0;
  unworked = 0;
  unfinished = 0;
  diverted = 0;
  /** Times that a position changed over to another lot. */
  changeovers = 0;
  /** No head leaves it any more today: it keeps them for the next day. */
  isClosed = false;
  /** Times that a breakdown stopped it, or one of its positions. */
  breakdownCount = 0;
  heldSeconds = Number.NaN;
  /** Since when a gate, a due stop or a full vessel holds the stage back; NaN when none does. */
  heldSince = Number.NaN;
  heatJoules = Number.NaN;
  readonly own = new OwnHours();
  /** Stages beside this one: what leaves here could come to them. */
  beside: readonly StageState[] = [];
  /** The queue as it is shown: before the hanging point the heads in the crates there, on a chain the heads that ride. */
  readonly shown = new Headcount();
  /** Positions that are blocked for a place here. */
  readonly waiters = new Waiters<PositionState>();

  /** `wanted`: moments, one bit each, that somebody wants to know of for every head. */
  constructor(line: CompiledLine, index: number, draws: StageDraws, wanted: number) {
    const { stages, chains, points } = line;
    this.index = index;
    this.kind = stages.kind[index]!;
    this.next = stages.next[index]!;
    this.places = stages.places[index]!;
    this.perCycle = stages.perCycle[index]!;
    this.headsPerHook = stages.headsPerHook[index]!;
    this.people = stages.people[index]!;
    this.section = stages.section[index]!;
    this.windowFrom = chains.windowFrom[index]!;
    this.windowTo = chains.windowTo[index]!;
    this.stopsChain = chains.stopsChain[index] === 1;
    this.isHanging = index === stages.hanging;
    this.takesHeads = index >= stages.hanging;
    this.isHeldForStunned = line.stunned?.hold === true && line.stunned.from === index;
    this.stuns = line.stunned?.from === index;
    this.sticks = line.stunned?.to === index;
    this.gates = rowsOf(stages.gate, stages.gateFrom, index);
    this.watched = wanted | watchedMoments(points.watched, index);
    this.branchFrom = stages.branchFrom[index]!;
    this.branchTo = stages.branchFrom[index + 1]!;
    this.sharesVary = stages.sharesVary[index] === 1;
    this.productFrom = stages.productFrom[index]!;
    this.productTo = stages.productFrom[index + 1]!;
    this.weightPerKg = stages.weightPerKg[index]!;
    this.weightAt = stages.weightAt[index]!;
    this.weightFrom = stages.weightFrom[index]!;
    this.weightTo = stages.weightTo[index]!;
    this.weightElse = stages.weightElse[index]!;
    this.changeoverSeconds = stages.changeoverSeconds[index]!;
    const learning = stages.learning[index]!;
    this.learning = learning === null ? null : new Learner(learning, stages, index);
    const pace = stages.pace[index]!;
    this.pace = pace === null || this.kind === CHAIN ? null : new Pace(pace);
    this.chilling = stages.chilling[index]!;
    this.travelSlot = line.slots.ofTravel[index]!;
    this.work = draws.work;
    this.travel = draws.travel;
    this.branch = draws.branch;
    this.queue = new Fifo();
    this.travelling = new Fifo();
    this.positions = positionsOf(line, this);
    this.idle = this.kind === DWELL ? 0 : this.positions.length;
    this.lastArrival = 0;
    this.heldSeconds = 0;
    this.heatJoules = 0;
  }
}

/** Of a dwell stage: who leaves it next, past heads that are held; null where nobody may. */
export function nextOut({ queue, positions, heldHeads }: StageState): Item | null {
  const { item } = positions[0]!;
  if (item !== null) return item;
  let next = queue.length === 0 ? null : queue.first;
  for (let held = 0; held < heldHeads && next !== null && (next.flags & HELD) !== 0; held++) next = next.next;
  return heldHeads === queue.length ? null : next;
}

function positionsOf(line: CompiledLine, stage: StageState): PositionState[] {
  const { positionFrom } = line.stages;
  const from = positionFrom[stage.index]!;
  const count = positionFrom[stage.index + 1]! - from;
  return Array.from({ length: count }, (_, rank) => new PositionState(line, stage, from + rank));
}

function watchedMoments(watched: Uint8Array, index: number): number {
  return MOMENTS.reduce((bits, _, moment) => bits | (watched[index * MOMENTS.length + moment]! << moment), 0);
}
