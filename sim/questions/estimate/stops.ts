import type { Breakdown } from "../../asked/plan/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import type { Chance } from "./pairServer.ts";

/**
 * The stops that so many seconds of running bring with them, as chances per head. Calendar time is taken for running
 * time, which is right for a station that is seldom idle. Several stops on one head count as one of their whole length.
 */
export function stopOf({ uptimeSeconds, repairSeconds }: Breakdown, runningSeconds: number): Chance {
  const expected = runningSeconds / meanOf(uptimeSeconds);
  const chance = -Math.expm1(-expected);
  return { chance, seconds: chance === 0 ? 0 : (expected * meanOf(repairSeconds)) / chance };
}

/** Every kind multiplies the states of a pair. */
const MAX_KINDS = 2;

/** Kinds of stops of like length joined into one, until two are left; their seconds per head stay the same. */
export function joinStops(stops: readonly Chance[]): Chance[] {
  const kinds = stops
    .filter(({ chance, seconds }) => chance > 0 && seconds > 0)
    .toSorted((a, b) => a.seconds - b.seconds);
  while (kinds.length > MAX_KINDS) {
    const ratios = kinds.slice(1).map(({ seconds }, index) => seconds / kinds[index]!.seconds);
    const nearest = ratios.indexOf(Math.min(...ratios));
    kinds.splice(nearest, 2, together(kinds[nearest]!, kinds[nearest + 1]!));
  }
  return kinds;
}

/** Chances this small hardly ever meet: they are added. */
function together(a: Chance, b: Chance): Chance {
  const chance = Math.min(1, a.chance + b.chance);
  return { chance, seconds: (a.chance * a.seconds + b.chance * b.seconds) / chance };
}
