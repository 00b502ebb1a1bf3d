import fc from "fast-check";
import type { Breakdown, Plan, Stage, Station } from "../../sim/asked/plan/index.ts";
import type { Varying } from "../../sim/maths/random/index.ts";
import { crew, station } from "./plans.ts";
import { randomPlan } from "./randomPlans.ts";

/**
 * Random small plans for the proof of the slopes. Taken as they come, nearly every plan of `randomPlan` has something for
 * which all slopes are withheld. So each kind of thing that can stand in the way is taken out at random: half of the plans
 * lose all of them, the others keep each with probability 1/3.
 */
export const HINDRANCES = [
  "hours",
  "closing",
  "calendar clock",
  "detours",
  "chains",
  "shared crews",
  "batches",
  "fleet",
  "vessels",
  "weights",
  "ties",
  "loss",
  "delays",
  "shared breakdowns",
  "paces",
  "shares",
  "stunned heads",
] as const;
export type Hindrance = (typeof HINDRANCES)[number];

const kept: fc.Arbitrary<Hindrance[]> = fc.oneof(
  fc.constant<Hindrance[]>([]),
  fc
    .array(fc.integer({ min: 0, max: 2 }), { minLength: HINDRANCES.length, maxLength: HINDRANCES.length })
    .map((dice) => HINDRANCES.filter((_, index) => dice[index] === 0)),
);

export const slopePlan: fc.Arbitrary<Plan> = fc
  .record({
    plan: randomPlan,
    kept,
    repairs: fc.boolean(),
    law: fc.constantFrom("exponential" as const, "gamma" as const),
  })
  .map(({ plan, kept: keeps, repairs, law }) => {
    const without = HINDRANCES.filter((each) => !keeps.includes(each));
    const calmer = without.reduce((left, each) => TAKEN_OUT[each](left), plan);
    return withoutLoadsAtOnce(withUptimes(repairs ? withOwnRepairer(calmer) : calmer, law));
  });

type TakeOut = (plan: Plan) => Plan;

const TAKEN_OUT: Record<Hindrance, TakeOut> = {
  hours: ({ atStart: _, ...plan }) => ({ ...plan, day: { ...plan.day, breaks: [] } }),
  closing: (plan) => ({ ...plan, day: { ...plan.day, closing: { rule: "finish" } } }),
  "calendar clock": eachBreakdown((each, positions) => ({
    ...each,
    clock: "running",
    scope: positions > 1 ? "position" : each.scope,
  })),
  detours: (plan) =>
    eachStation((each) => ({ ...each, diversions: [], weights: null }))(
      eachBreakdown((each) => ({ ...each, headInHand: "resume" }))(plan),
    ),
  chains: withoutChains,
  "shared crews": ownCrews,
  batches: eachCrateStep((each) => ({ ...each, cratesPerCycle: 1, positions: 1 })),
  fleet: (plan) =>
    plan.liveHandling === null ? plan : { ...plan, liveHandling: { ...plan.liveHandling, fleet: null } },
  vessels: (plan) => ({
    ...plan,
    vessels: plan.vessels.map((each) => ({ ...each, crew: null, whenFull: "spill" as const })),
  }),
  weights: (plan) => {
    const passing = plan.line.findIndex((stage) => stage.kind === "station" && stage.positions > 1);
    const line = plan.line.map((stage, index) =>
      passing >= 0 && index > passing && stage.kind === "station" ? { ...stage, weightFactor: null } : stage,
    );
    return { ...plan, line };
  },
  ties: withoutFixedTimes,
  loss: (plan) => (plan.supply.kind === "stream" ? { ...plan, supply: { ...plan.supply, whenFull: "wait" } } : plan),
  shares: eachStage((stage) => ({
    ...stage,
    removals: stage.removals.map(({ as, share }) => ({ as, share })),
    diversions: stage.diversions.map(({ to, share }) => ({ to, share })),
  })),
  paces: eachStage((stage) => {
    if (stage.kind === "dwell") return stage;
    if (stage.kind === "station") return { ...stage, pace: [] };
    return { ...stage, pace: [], stations: stage.stations.map((each) => ({ ...each, pace: [] })) };
  }),
  "shared breakdowns": (plan) => ({ ...plan, sharedBreakdowns: [] }),
  "stunned heads": (plan) => ({ ...plan, stunned: null }),
  delays: (plan) => {
    const { supply } = plan;
    if (supply.kind !== "loads") return plan;
    return { ...plan, supply: { ...supply, loads: supply.loads.map((each) => ({ ...each, delay: null })) } };
  },
};

function eachStage(change: (stage: Stage) => Stage): TakeOut {
  return (plan) => ({ ...plan, line: plan.line.map(change) });
}

/** A station in the place of each chain; what named its stations or stopped them goes with them. */
function withoutChains(plan: Plan): Plan {
  const gone = new Set(
    plan.line.flatMap((stage) => (stage.kind === "chain" ? stage.stations.map(({ name }) => name) : [])),
  );
  const { stunned } = plan;
  const sharedBreakdowns = plan.sharedBreakdowns
    .map((each) => ({ ...each, stops: each.stops.filter((name) => !gone.has(name)) }))
    .filter(({ stops }) => stops.length > 0);
  const line = plan.line.map((stage) =>
    stage.kind === "chain"
      ? station(stage.name, { family: "gamma", mean: stage.secondsPerShackle, cv: 0.5 }, { section: stage.section })
      : stage,
  );
  const names = line.map(({ name }) => name);
  const isWhole = stunned !== null && [stunned.from, stunned.to].every((name) => names.includes(name));
  return { ...plan, line, sharedBreakdowns, stunned: isWhole ? stunned : null };
}

function eachStation(change: (stage: Station) => Station): TakeOut {
  return eachStage((stage) => (stage.kind === "station" ? change(stage) : stage));
}

function eachBreakdown(change: (breakdown: Breakdown, positions: number) => Breakdown): TakeOut {
  return eachStage((stage) => {
    if (stage.kind === "dwell") return stage;
    if (stage.kind === "station") {
      return { ...stage, breakdowns: stage.breakdowns.map((each) => change(each, stage.positions)) };
    }
    const stations = stage.stations.map((each) => ({
      ...each,
      breakdowns: each.breakdowns.map((breakdown) => change(breakdown, each.positions)),
    }));
    return { ...stage, stations };
  });
}

type CrateStep = NonNullable<Plan["liveHandling"]>["toHanging"][number];

function eachCrateStep(change: (step: CrateStep) => CrateStep): TakeOut {
  return (plan) => {
    const { liveHandling } = plan;
    if (liveHandling === null) return plan;
    const { toHanging, back } = liveHandling;
    return { ...plan, liveHandling: { ...liveHandling, toHanging: toHanging.map(change), back: back.map(change) } };
  };
}

/** Every place of work has a crew of its own, now and then one person short; nobody is needed for repairs. */
function ownCrews(plan: Plan): Plan {
  const crews: Plan["crews"] = [];
  const own = <Place extends { name: string; crews: string[]; positions: number; peoplePerPosition: number }>(
    place: Place,
  ): Place => {
    if (place.crews.length === 0) return place;
    const name = `crew of ${place.name}`;
    const needed = place.positions * place.peoplePerPosition;
    crews.push(crew(name, place.crews.length > 1 ? needed : Math.max(place.peoplePerPosition, needed - 1)));
    return { ...place, crews: [name] };
  };
  const changed = eachCrateStep(own)(
    eachStage((stage) => {
      if (stage.kind === "station") return own(stage);
      return stage.kind === "chain" ? { ...stage, stations: stage.stations.map(own) } : stage;
    })(eachBreakdown((each) => ({ ...each, crew: null }))(plan)),
  );
  const day = { ...plan.day, breaks: plan.day.breaks.map((each) => ({ ...each, crews: [] })) };
  // Those who would have stepped in are gone.
  const maintenance = plan.crews.filter(({ name }) => name === "maintenance").map(({ cover: _, ...each }) => each);
  return { ...changed, day, crews: [...crews, ...maintenance] };
}

/** The first failure of a single machine is repaired by somebody who has no other job. */
function withOwnRepairer(plan: Plan): Plan {
  const used = JSON.stringify([plan.line, plan.vessels, plan.liveHandling]).includes('"maintenance"');
  const fails = plan.line.findIndex(
    (stage) => stage.kind === "station" && stage.positions === 1 && stage.breakdowns.length > 0,
  );
  if (used || fails < 0) return plan;
  const line = plan.line.map((stage, index) => {
    if (index !== fails || stage.kind !== "station") return stage;
    const breakdowns = stage.breakdowns.map((each, row) => (row === 0 ? { ...each, crew: "maintenance" } : each));
    return { ...stage, breakdowns };
  });
  return { ...plan, line };
}

/** Uptimes that wear (gamma) where a station has one position; elsewhere as they are. */
function withUptimes(plan: Plan, law: "exponential" | "gamma"): Plan {
  if (law === "exponential") return plan;
  return eachBreakdown((each, positions) => {
    const { uptimeSeconds } = each;
    if (positions > 1 || uptimeSeconds.family !== "exponential") return each;
    return { ...each, uptimeSeconds: { family: "gamma", mean: uptimeSeconds.mean, cv: 0.5 } };
  })(plan);
}

function withoutFixedTimes(plan: Plan): Plan {
  const vary = (time: Varying): Varying =>
    time.family === "constant" && time.value > 0 ? { family: "lognormal", mean: time.value, cv: 0.3 } : time;
  const line = plan.line.map((stage): Stage => {
    const travelSeconds = stage.travelSeconds === null ? null : vary(stage.travelSeconds);
    if (stage.kind === "station") return { ...stage, travelSeconds, cycleSeconds: vary(stage.cycleSeconds) };
    if (stage.kind === "dwell" && stage.dwell.kind === "drawn") {
      return { ...stage, travelSeconds, dwell: { kind: "drawn", seconds: vary(stage.dwell.seconds) } };
    }
    return { ...stage, travelSeconds };
  });
  const { supply } = plan;
  const calmer = eachCrateStep((each) => ({ ...each, secondsPerCycle: vary(each.secondsPerCycle) }))({ ...plan, line });
  if (supply.kind !== "stream") return calmer;
  return { ...calmer, supply: { ...supply, interarrival: vary(supply.interarrival) } };
}

/** No load comes at the very start, where it cannot come earlier; the others keep the moments drawn. */
function withoutLoadsAtOnce(plan: Plan): Plan {
  const { supply } = plan;
  if (supply.kind !== "loads") return plan;
  const loads = supply.loads.map((each) => ({ ...each, atSeconds: each.atSeconds + 1 }));
  return { ...plan, supply: { ...supply, loads } };
}
