import { CRATE_STEP_NAMES, CRATE_STEPS } from "../../asked/plan/index.ts";
import type { Breakdown, Chain, ChainStation, CrateStep, Plan, Stage } from "../../asked/plan/plan.ts";
import type { Varying } from "../../maths/random/index.ts";
import { byKind, does, type StageKind } from "../../text/kinds/index.ts";

/** A stage of the compiled line before it is flattened. */
export type Step =
  | { kind: "crates"; name: string; section: null; of: CrateStep; isBack: boolean }
  | { [K in StageKind]: { kind: K; name: string; section: string; of: Stage & { kind: K } } }[StageKind]
  | { kind: "chain station"; name: string; section: string; of: ChainStation; chain: Chain };

/**
 * All stages: crate steps towards the hanging point, crate steps back to the lorry, then the plan's line, where the
 * stations on a chain follow it.
 */
export function steps(plan: Plan): Step[] {
  const crates = (list: CrateStep[], isBack: boolean): Step[] =>
    list.map((of) => ({ kind: "crates", name: of.name, section: null, of, isBack }));
  return [
    ...crates(plan.liveHandling?.toHanging ?? [], false),
    ...crates(plan.liveHandling?.back ?? [], true),
    ...plan.line.flatMap(lineSteps),
  ];
}

function lineSteps(stage: Stage): Step[] {
  const { kind, name, section } = stage;
  const own = { kind, name, section, of: stage } as Step;
  if (!does(stage, "carry stations")) return [own];
  return [
    own,
    ...stage.stations.map((of): Step => ({ kind: "chain station", name: of.name, section, of, chain: stage })),
  ];
}

/** What a step has in common with every other: places to work at, people, things that break. */
export interface Workplace {
  positions: number;
  crews: string[];
  peoplePerPosition: number;
  breakdowns: Breakdown[];
}

/** A dwell stage and a chain have one position: their way out. */
export function workplace(step: Step): Workplace {
  return does(step, "work") ? step.of : { positions: 1, crews: [], peoplePerPosition: 0, breakdowns: [] };
}

/** Keys of crate steps by what they are called, whichever way crates are handled. */
const CRATE_KEYS = new Map(
  Object.values(CRATE_STEP_NAMES).flatMap((names) => CRATE_STEPS.map((key) => [names[key], key] as const)),
);

/** Where the plan's file has the step, by names. */
export function fileSteps(step: Step): string[] {
  if (does(step, "handle crates")) return ["liveHandling", CRATE_KEYS.get(step.name)!];
  return does(step, "stand on a chain") ? ["line", step.chain.name, "stations", step.name] : ["line", step.name];
}

/** What leaves the head at this step. */
export function byProductsOf(step: Step) {
  return does(step, "handle crates") ? [] : step.of.byProducts;
}

/** The line's own part of a step: where heads go from it. Null for crate steps and stations on a chain. */
export function stageOf(step: Step): Stage | null {
  return does(step, "send heads on") ? step.of : null;
}

/** The same, but of a station on a chain the chain. */
export function carrierOf(step: Step): Stage | null {
  return does(step, "stand on a chain") ? step.chain : stageOf(step);
}

/** How long the work, or the stay, of one head (crate steps: of one cycle) takes; null where a plan draws no time for it. */
export function ownTime(step: Step): Varying | null {
  return byKind<Step, Varying | null>(step, {
    crates: ({ of }) => of.secondsPerCycle,
    station: ({ of }) => of.cycleSeconds,
    dwell: ({ of }) => (of.dwell.kind === "drawn" ? of.dwell.seconds : null),
    chain: () => null,
    "chain station": ({ of }) => of.cycleSeconds,
  });
}
