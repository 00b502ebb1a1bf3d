import { MOMENTS } from "../../asked/plan/plan.ts";
import type { HeadTable } from "./dayRecord.ts";
import type { HeadWatcher } from "./headWatcher.ts";

const WIDTH = MOMENTS.length;

/** Passing times of every head, in hanging order; grows with the heads, so only on request. */
export class HeadLog implements HeadWatcher {
  private readonly stages: number;
  private rows = 0;
  private times = new Float64Array(0);
  private destinations = new Int32Array(0);
  private loads = new Int32Array(0);
  private arrived = new Float64Array(0);
  private stunnedAgain = new Uint8Array(0);
  private stuckThere = new Uint8Array(0);

  constructor(stages: number) {
    this.stages = stages;
  }

  begin(head: number, load: number, arrived: number): void {
    if (head >= this.destinations.length) this.grow();
    this.rows = head + 1;
    this.loads[head] = load;
    this.arrived[head] = arrived;
    this.destinations[head] = -1;
  }

  help(head: number, sticks: boolean): void {
    if (sticks) this.stuckThere[head] = 1;
    else this.stunnedAgain[head]!++;
  }

  pass(head: number, stage: number, moment: number, now: number): void {
    this.times[(head * this.stages + stage) * WIDTH + moment] = now;
  }

  end(head: number, destination: number): void {
    this.destinations[head] = destination;
  }

  table(): HeadTable {
    return {
      heads: this.rows,
      times: this.times.slice(0, this.rows * this.stages * WIDTH),
      destinations: this.destinations.slice(0, this.rows),
      loads: this.loads.slice(0, this.rows),
      arrived: this.arrived.slice(0, this.rows),
      stunnedAgain: this.stunnedAgain.slice(0, this.rows),
      stuckThere: this.stuckThere.slice(0, this.rows),
    };
  }

  private grow(): void {
    const capacity = Math.max(1024, this.destinations.length * 2);
    const times = new Float64Array(capacity * this.stages * WIDTH).fill(Number.NaN);
    times.set(this.times);
    this.times = times;
    const [destinations, loads, arrived] = [this.destinations, this.loads, this.arrived];
    const [stunnedAgain, stuckThere] = [this.stunnedAgain, this.stuckThere];
    this.destinations = new Int32Array(capacity);
    this.loads = new Int32Array(capacity);
    this.arrived = new Float64Array(capacity);
    this.stunnedAgain = new Uint8Array(capacity);
    this.stuckThere = new Uint8Array(capacity);
    this.destinations.set(destinations);
    this.loads.set(loads);
    this.arrived.set(arrived);
    this.stunnedAgain.set(stunnedAgain);
    this.stuckThere.set(stuckThere);
  }
}
