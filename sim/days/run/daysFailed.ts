import type { FailedDay } from "./simulatedDay.ts";

/** Some days could not be simulated; the others were. */
export class DaysFailed extends Error {
  constructor(failed: readonly FailedDay[], variantNames: readonly string[]) {
    const shown = failed.slice(0, 3).map(({ variant, replication, message }) => {
      return `variant "${variantNames[variant]}", day ${replication + 1}: ${message}`;
    });
    const more = failed.length > shown.length ? [`and ${failed.length - shown.length} more`] : [];
    const count = failed.length === 1 ? "1 day" : `${failed.length} days`;
    super(`${count} could not be simulated: ${[...shown, ...more].join("; ")}`);
    this.name = "DaysFailed";
  }
}
