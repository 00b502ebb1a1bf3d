import type { ObservedColumns } from "../charts/index.ts";
import type { Calibration } from "../contract.ts";
import { isolated } from "../frame/index.ts";

/** The counts of a calibration check by stretches of the day. */
export function observedView(calibration: Calibration): ObservedColumns {
  const { quantities, days, observedDays, startClockSeconds, countedAt } = calibration;
  const counts = quantities.filter(({ stretch }) => stretch !== null);
  const differ = counts.filter(({ comparison }) => comparison?.shown).length;
  return {
    title: `Heads counted at ${isolated(countedAt)}: observed and simulated`,
    caption: "Dots off the line all day: the pace differs. Dots off the line in one hour: something happened in it",
    subtitle: `Dots: ${observedDays} observed ${observedDays === 1 ? "day" : "days"}. Line and band: mean and middle 95 % of ${days} simulated days`,
    description: `A difference was found in ${differ} of ${counts.length} stretches.`,
    startClockSeconds,
    stretches: counts
      .map(({ stretch, values, comparison }) => ({
        ...stretch!,
        observed: values.filter((value) => value !== null),
        simulated:
          comparison === null
            ? null
            : { mean: comparison.simulated.mean, low: comparison.simulated.p025, high: comparison.simulated.p975 },
        differs: comparison?.shown ?? false,
      }))
      .sort((a, b) => a.fromSeconds - b.fromSeconds),
  };
}
