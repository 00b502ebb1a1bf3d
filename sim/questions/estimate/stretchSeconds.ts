import { carriedBy, type Plan, type Stage } from "../../asked/plan/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { byKind } from "../../text/kinds/index.ts";
import { meanDwellSeconds } from "./dwellSeconds.ts";
import { liveWeight } from "./liveWeight.ts";
import { meanCycleSeconds } from "./workOf.ts";

/**
 * Seconds that a head takes on the main way from the start of one stage to the start of another (or, `whole`, to its
 * end), waiting left out. Names may be of stations on chains; the whole chain is then passed.
 */
export function stretchSeconds(plan: Plan, from: string, to: string | null, whole: boolean): number {
  const main = plan.line.filter(({ offLine }) => !offLine);
  const first = Math.max(
    0,
    main.findIndex((stage) => isAt(stage, from)),
  );
  const last = to === null ? main.length - 1 : main.findIndex((stage) => isAt(stage, to));
  const stays = main.slice(first, whole ? last + 1 : last).map((stage) => staySeconds(stage, plan));
  const ways = main.slice(first, last).map(({ travelSeconds }) => (travelSeconds === null ? 0 : meanOf(travelSeconds)));
  return [...stays, ...ways].reduce((sum, seconds) => sum + seconds, 0);
}

function isAt(stage: Stage, name: string): boolean {
  return [stage, ...carriedBy(stage)].some((each) => each.name === name);
}

function staySeconds(stage: Stage, plan: Plan): number {
  return byKind<Stage, number>(stage, {
    station: (own) => meanCycleSeconds(own, liveWeight(plan).meanKg),
    dwell: (own) => meanDwellSeconds(own, plan),
    chain: ({ places, secondsPerShackle }) => places * secondsPerShackle,
  });
}
