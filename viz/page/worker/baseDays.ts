import type { SimulatedDay } from "../../../sim/days/run/index.ts";

/** Days of the plan as it is: they outlive every change of the variant, as long as plan, seed and responses stay. */
export class BaseDays {
  private key = "";
  private readonly days = new Map<number, SimulatedDay>();

  /** Keeps what is known when the key is the same as before; else begins afresh. */
  begin(key: string): void {
    if (key === this.key) return;
    this.key = key;
    this.days.clear();
  }

  /** A day simulated for this key; one of another key comes too late and is left out. */
  add(key: string, day: SimulatedDay): void {
    if (key === this.key) this.days.set(day.replication, day);
  }

  known(): SimulatedDay[] {
    return [...this.days.values()];
  }

  has(replication: number): boolean {
    return this.days.has(replication);
  }
}
