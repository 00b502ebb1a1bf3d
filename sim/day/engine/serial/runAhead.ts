import type { CompiledLine } from "../../line/index.ts";
import { BLOCKED, type DayOptions, DayState, WORK_ENDS, WORKING } from "../state/dayState.ts";
import type { Item } from "../state/item.ts";
import type { PositionState } from "../state/positionState.ts";
import { BLOCK, SerialPass } from "./serialPass.ts";

const CARCASS = 0;
/** A quick machine before a buffer without end leaves any number of heads there by the time the last carcass is out. */
const MAX_LEFT = 100_000;

/**
 * A day of a serial line (`isSerial`) up to the instant at which the last carcass but one leaves, simulated without
 * events: the state is bit for bit what the event loop would have made of it, and the event loop goes on from there.
 *
 * Null when that cannot be: with fewer than two heads, when the plan's ceiling or that of events comes before, when so many
 * heads are left on the line that the event loop is to look after them, or when some work takes no time, so that the
 * order of what happens at one instant has to be sorted out.
 */
export function runAhead(line: CompiledLine, options: DayOptions): DayState | null {
  const { supply } = line;
  const { mostEvents = Infinity } = options;
  if (supply.kind === "loads" || supply.heads < 2) return null;
  if ((supply.heads - 1) * line.stages.count > mostEvents) return null;
  const day = new DayState(line, options);
  const pass = new SerialPass(day);
  const heads = supply.kind === "saturated" ? new WithoutEnd(pass) : new Stream(day, supply.heads);
  const block: Block = { weights: new Float64Array(BLOCK), outs: new Float64Array(BLOCK) };
  for (let left = supply.heads - 1; left > 0; left -= BLOCK)
    takeThrough(day, pass, heads, block, Math.min(BLOCK, left));
  if (day.now > line.ceilingSeconds) return null;
  const isLeft = () => heads.nextAt <= day.now && day.headsOnLine <= MAX_LEFT;
  while (!pass.hadInstantWork && isLeft()) takeInto(day, pass, heads);
  if (pass.hadInstantWork || day.headsOnLine > MAX_LEFT) return null;
  pass.close(day.now);
  day.arrived = day.hung;
  day.workFinish = day.now;
  day.events = day.stageAt.reduce((sum, { processed }) => sum + processed, 0);
  if (supply.kind === "stream") scheduleStream(day, supply.heads, heads.nextAt);
  return day.events > mostEvents ? null : day;
}

/** Where heads come from: when the next one joins the line (Infinity: none will), and that so many do. */
interface Source {
  readonly nextAt: number;
  take(joins: Float64Array, heads: number): void;
}

/** Heads without end: one is hung when the first machine is free, which the pass itself finds. */
class WithoutEnd implements Source {
  private readonly pass: SerialPass;

  constructor(pass: SerialPass) {
    this.pass = pass;
  }

  get nextAt(): number {
    return this.pass.freeAt;
  }

  take(): void {}
}

class Stream implements Source {
  nextAt: number;
  private left: number;
  private readonly day: DayState;

  constructor(day: DayState, heads: number) {
    this.day = day;
    this.left = heads - 1;
    this.nextAt = day.interarrival!.draw();
  }

  take(joins: Float64Array, heads: number): void {
    for (let head = 0; head < heads; head++) {
      joins[head] = this.nextAt;
      this.nextAt = this.left-- > 0 ? this.nextAt + this.day.interarrival!.draw() : Infinity;
    }
  }
}

function scheduleStream(day: DayState, heads: number, nextAt: number): void {
  day.events += day.arrived;
  day.toHang = heads - day.arrived;
  day.calendar.schedule(day.line.slots.supply, nextAt);
}

/** Live weights of a block's heads, and when they are out. */
interface Block {
  weights: Float64Array;
  outs: Float64Array;
}

/** So many heads go the whole way and are out; the clock shows when the last one is. */
function takeThrough(day: DayState, pass: SerialPass, source: Source, { weights, outs }: Block, heads: number): void {
  day.liveWeight!.drawInto(weights, 0, heads);
  source.take(pass.joins, heads);
  pass.takeThrough(heads, outs);
  for (let head = 0; head < heads; head++) {
    const weight = weights[head]!;
    day.liveKg += weight;
    day.outKg[CARCASS]! += weight;
    day.carcassLiveKg += weight;
    day.timeInSystem.add(outs[head]! - pass.joins[head]!);
  }
  day.hung += heads;
  day.out[CARCASS]! += heads;
  day.now = outs[heads - 1]!;
}

/** A head that is still on the line now: it stands in a queue or at a machine. */
function takeInto(day: DayState, pass: SerialPass, source: Source): void {
  source.take(pass.joins, 1);
  pass.takeUntil(day.now);
  if (pass.hadInstantWork) return;
  const item = day.pool.take();
  const weight = day.liveWeight!.draw();
  day.liveKg += weight;
  day.hung++;
  item.number = day.hung;
  item.load = -1;
  item.arrived = pass.joins[0]!;
  item.weight = weight;
  item.mass = weight;
  day.headsOnLine++;
  standAt(day, pass, item);
}

function standAt(day: DayState, { at, start, end }: SerialPass, item: Item): void {
  const stage = day.stageAt[at]!;
  stage.occupancy++;
  if (start > day.now) {
    stage.queue.push(item);
    return;
  }
  const machine = stage.positions[0]!;
  machine.item = item;
  stage.idle--;
  if (end > day.now) putToWork(day, machine, start, end);
  else putBlocked(day, machine, end);
}

function putToWork(day: DayState, machine: PositionState, start: number, end: number): void {
  machine.state = WORKING;
  machine.stateSince = start;
  machine.runStart = start;
  machine.remaining = end - start;
  machine.stage.workingPositions++;
  machine.announces = WORK_ENDS;
  day.calendar.schedule(machine.slot, end);
}

function putBlocked(day: DayState, machine: PositionState, end: number): void {
  machine.state = BLOCKED;
  machine.stateSince = end;
  machine.done = true;
  day.stageAt[machine.stage.next]!.waiters.push(machine);
}
