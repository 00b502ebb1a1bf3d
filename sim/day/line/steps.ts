import type { Breakdown, Chain, ChainStation, CrateStep, Dwell, Plan, Stage, Station } from "../../asked/plan/plan.ts";

/** A stage of the compiled line before it is flattened. */
export type Step =
  | { kind: "crates"; name: string; section: null; of: CrateStep; isBack: boolean }
  | { kind: "station"; name: string; section: string; of: Station }
  | { kind: "dwell"; name: string; section: string; of: Dwell }
  | { kind: "chain"; name: string; section: string; of: Chain }
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
  const { name, section } = stage;
  if (stage.kind === "station") return [{ kind: "station", name, section, of: stage }];
  if (stage.kind === "dwell") return [{ kind: "dwell", name, section, of: stage }];
  const onIt = stage.stations.map((of): Step => ({ kind: "chain station", name: of.name, section, of, chain: stage }));
  return [{ kind: "chain", name, section, of: stage }, ...onIt];
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
  if (step.kind === "dwell" || step.kind === "chain")
    return { positions: 1, crews: [], peoplePerPosition: 0, breakdowns: [] };
  return step.of;
}

/** What leaves the head at this step. */
export function byProductsOf(step: Step) {
  return step.kind === "crates" ? [] : step.of.byProducts;
}

/** The line's own part of a step: where heads go from it. Null for crate steps and stations on a chain. */
export function stageOf(step: Step): Stage | null {
  return step.kind === "crates" || step.kind === "chain station" ? null : step.of;
}
