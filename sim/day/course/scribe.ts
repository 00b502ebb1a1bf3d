import type { DayState } from "../engine/index.ts";
import { ChainMoves } from "./chainMoves.ts";
import { CRATE_PLACES, HEAD_COUNTS } from "./dayCourse.ts";
import { realColumn } from "./growingColumn.ts";
import { StepLog } from "./stepLog.ts";

const NONE = -1;
const CARCASS = 0;
/** Vessel levels are written down in steps of this share of the capacity. */
const VESSEL_STEP = 0.01;

/** Looks at a day after every instant at which something happened and writes down what changed. Reads, never writes, the day. */
export class Scribe {
  readonly states: StepLog;
  readonly held: StepLog;
  readonly waiting: StepLog;
  readonly sections: StepLog;
  readonly busy: StepLog;
  readonly onDuty: StepLog;
  readonly crates = new StepLog(CRATE_PLACES.length);
  readonly counts = new StepLog(HEAD_COUNTS.length);
  readonly vessels: StepLog;
  readonly chainMoves: ChainMoves;
  readonly moments = realColumn();
  private readonly day: DayState;

  constructor(day: DayState) {
    const { stages, positions, crews, sectionNames, vessels } = day.line;
    this.day = day;
    this.states = new StepLog(positions.count);
    this.held = new StepLog(positions.count);
    this.waiting = new StepLog(stages.count);
    this.sections = new StepLog(sectionNames.length);
    this.busy = new StepLog(crews.count);
    this.onDuty = new StepLog(crews.count);
    this.vessels = new StepLog(vessels.count);
    this.chainMoves = new ChainMoves(day);
  }

  look(): void {
    const { day, moments } = this;
    if (moments.length === 0 || moments.at(moments.length - 1) !== day.now) moments.push(day.now);
    this.lookAtPositions();
    this.lookAtCounts();
    this.chainMoves.look();
  }

  private lookAtPositions(): void {
    const { day, states, held } = this;
    for (const { index, stage, state, item } of day.positionAt) {
      states.set(index, day.now, state);
      held.set(index, day.now, item === null ? NONE : stage.takesHeads ? item.number : 0);
    }
  }

  private lookAtCounts(): void {
    const { day } = this;
    for (const { index, shown } of day.stageAt) this.waiting.set(index, day.now, shown.heads);
    for (const [section, { heads }] of day.inSection.entries()) this.sections.set(section, day.now, heads);
    for (const { index, busy, away, people } of day.crewAt) {
      this.busy.set(index, day.now, busy);
      this.onDuty.set(index, day.now, Math.max(0, people - away));
    }
    for (const { index, capacityKg, kg } of day.vesselAt) {
      const step = capacityKg * VESSEL_STEP;
      this.vessels.set(index, day.now, Math.round(kg / step) * step);
    }
    this.lookAtSupply();
  }

  private lookAtSupply(): void {
    const { day, crates, counts } = this;
    crates.set(0, day.now, day.atHanging.length);
    crates.set(1, day.now, day.emptyCrates);
    crates.set(2, day.now, day.cleanCrates);
    let takenOff = 0;
    for (let destination = CARCASS + 1; destination < day.out.length; destination++) takenOff += day.out[destination]!;
    // Carcasses that were there when the day began came and were hung before it.
    counts.set(0, day.now, day.arrived + day.keptHeads);
    counts.set(1, day.now, day.hung + day.keptHeads);
    counts.set(3, day.now, day.out[CARCASS]!);
    counts.set(4, day.now, takenOff);
  }
}
