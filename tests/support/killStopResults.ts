import type { Gate, Plan } from "../../sim/asked/plan/plan.ts";
import { killStopResponses } from "../../sim/day/observations/index.ts";
import { runSingleDay, runStudy } from "../../sim/days/run/index.ts";
import type { StudyResults } from "../../viz/contract.ts";
import { breakdown } from "./breakdowns.ts";
import { constant, crew, dwell, manual, pause, planOf, station, stream } from "./plans.ts";
import { threeVariants } from "./threeVariants.ts";
import { withDay } from "./withDay.ts";

const stops = () => killStopResponses(killLinePlan()).map(({ key }) => key);
const MADE = { gambrel: "test", command: "test" };

/** Stunned only when sticking has room. */
const GATE: Gate = { name: "room", from: "stunning", to: { stage: "sticking", moment: "start" }, atMost: 1 };

/**
 * A small kill line: a head every 5 s, stunning 2 s, sticking 2 s, bleeding 20 s. Sticking jams by the clock after 20 s, for 30 s;
 * the people have a break at 100 s, before which the line is emptied. Ten seconds are allowed from stunning to sticking.
 */
export function killLinePlan(changes: Partial<Plan> = {}, heads = 40): Plan {
  const jam = breakdown(200, 30, { clock: "calendar" });
  const line = [
    manual("stunning", 2, "kill", { buffer: Infinity }),
    manual("sticking", 2, "kill", { buffer: 5, breakdowns: [jam] }),
    dwell("bleeding", 20, 10),
    station("dressing", 1, { buffer: Infinity }),
  ];
  const limit = {
    ...{ name: "stun to stick", minSeconds: null, maxSeconds: 10, source: "house rule, invented" },
    from: { stage: "stunning", moment: "end" as const },
    to: { stage: "sticking", moment: "start" as const },
  };
  const plan = planOf(stream(constant(5), heads), line, {
    ...{ crews: [crew("kill", 2)], limits: [limit], gates: [GATE] },
    ...changes,
  });
  const breaks = [pause("tea", 100, 60, { crews: ["kill"] })];
  return withDay(plan, { breaks, safeStop: { from: "stunning", to: "bleeding" } });
}

/** The same without the jam: no head waits. */
export function smoothPlan(plan = killLinePlan()): Plan {
  return { ...plan, line: plan.line.map((stage) => (stage.kind === "station" ? { ...stage, breakdowns: [] } : stage)) };
}

export function killLineDay(plan = killLinePlan()): StudyResults {
  return runSingleDay(plan, "seed", "binned", MADE);
}

/** Three days of each plan, which a study asks how often the kill line stood; the first one is the base. */
export function killLineStudy(
  plans: Record<string, Plan>,
  responses = ["headsPerHour", ...stops()],
): Promise<StudyResults> {
  const variants = Object.entries(plans).map(([name, plan]) => {
    return { name, levels: [], set: {}, insert: [], remove: [], plan };
  });
  return runStudy(threeVariants({ why: false, variants, replications: 3, responses }), MADE);
}
