import type { LotRecord } from "../dayRecord.ts";
import type { DayState } from "../state/dayState.ts";
import type { LoadState } from "../state/loadState.ts";

/** Follows loads from day to day. */
export class LotBook {
  private readonly rows: { load: LoadState; day: number }[] = [];
  private readonly clocks = new Map<LoadState, number>();
  private names: readonly string[] = [];

  /** A day begins: its loads are new, and those kept go by its clock from now on. */
  begin(day: DayState, number: number, startSeconds: number): void {
    this.names = day.line.destinationNames;
    for (const load of day.loadAt) {
      if (!this.clocks.has(load)) this.rows.push({ load, day: number });
      this.clocks.set(load, startSeconds);
    }
  }

  lots(): LotRecord[] {
    return this.rows.map(({ load, day }) => {
      const at = (seconds: number) => (Number.isNaN(seconds) ? null : seconds + this.clocks.get(load)!);
      const byName = (column: Float64Array) => Object.fromEntries(this.names.map((name, row) => [name, column[row]!]));
      return {
        ...{ name: load.name, day, heads: load.crates * load.headsPerCrate, hung: load.hung, liveKg: load.liveKg },
        dueSeconds: load.dueSeconds + this.clocks.get(load)!,
        arrivedSeconds: load.cameAtAll ? at(load.arrived) : null,
        firstHungSeconds: at(load.firstHung),
        lastHungSeconds: at(load.lastHung),
        lastOutSeconds: at(load.lastOut),
        withdrawn: load.withdrawnAt >= 0,
        out: byName(load.out),
        outKg: byName(load.outKg),
      };
    });
  }
}
