import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, it } from "vitest";
import { type Plan, readPlan, type Stage } from "../../sim/asked/plan/index.ts";
import { runDay } from "../../sim/day/engine/index.ts";
import { compileLine } from "../../sim/day/line/index.ts";
import { oee } from "../../sim/day/observations/index.ts";
import { meanOf } from "../../sim/maths/random/index.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { planOf, station, stream } from "../support/plans.ts";
import { runChecked } from "../support/timeline.ts";
import { TRADE } from "./register/trade.ts";

const checks = new OutsideChecks(TRADE);
const NAMES = ["sallowfield-compact", "ferncote", "tavelmoss-chains"];
const PLANS = NAMES.map(read);
const DAYS = PLANS.map((plan) => runDay(compileLine(plan), { seed: "trade", replication: 0 }));

function read(name: string): Plan {
  const path = resolve(import.meta.dirname, "../../experiments/plans", `${name}.json`);
  const { plan } = readPlan(JSON.parse(readFileSync(path, "utf8")), { readText: () => "" });
  if (plan === null) throw new Error(`${name} is not sound`);
  return plan;
}

/** A statement as a comparison: 1 when it holds. */
const holds = (id: string, what: string, truth: boolean) => checks.exact(id, what, truth ? 1 : 0, 1, 0);

/** Stages with the stations on chains after their chain, in the order in which heads pass them. */
const worked = (plan: Plan) =>
  plan.line.flatMap((stage): (Stage | Extract<Stage, { kind: "chain" }>["stations"][number])[] =>
    stage.kind === "chain" ? [stage, ...stage.stations] : [stage],
  );

describe("the example plans and the trade", () => {
  it(checks.title("T.1"), () => {
    const compact = PLANS[0]!;
    holds("T.1", "target", compact.targetHeadsPerSecond! * 3600 <= 500);
    holds("T.1", "skinning machine", 3600 / meanOf(machine(compact, "skinning")) <= 650);
  });

  it(checks.title("T.2"), () => {
    for (const plan of PLANS.slice(1)) {
      const perHour = 3600 / meanOf(machine(plan, "four-leg cutting"));
      holds("T.2", plan.name, perHour <= 1600 + 1e-6);
    }
  });

  it(checks.title("T.3"), () => {
    for (const plan of PLANS) {
      const names = worked(plan).map(({ name }) => name);
      const after = names.indexOf("hind-leg cutting") - names.findIndex((name) => name.startsWith("bleeding"));
      holds(
        "T.3",
        plan.name,
        after >= 1 && after <= 2 && names.indexOf("hind-leg cutting") < names.indexOf("pre-loosening"),
      );
    }
  });

  it(checks.title("T.4"), () => {
    for (const plan of PLANS) holds("T.4", plan.name, [2, 4].includes(chiller(plan).headsPerHook));
  });

  it(checks.title("9.1"), () => {
    for (const plan of PLANS) {
      const { dwell } = chiller(plan);
      holds("9.1", plan.name, dwell.kind === "chilling" && dwell.chilling.coreCelsius <= 4);
    }
  });

  it(checks.title("9.9"), () => {
    for (const plan of PLANS) {
      const limit = plan.limits.find(({ name }) => name === "stun to stick")!;
      holds("9.9", plan.name, limit.maxSeconds === 10 && limit.source.includes("Tierschutz-Schlachtverordnung"));
    }
  });

  it(checks.title("9.20"), () => {
    for (const plan of PLANS) {
      const loads = plan.supply.kind === "loads" ? plan.supply.loads : [];
      const means = loads.map((load) => meanOf(load.liveWeightKg));
      holds("9.20", plan.name, means.length > 0 && means.every((mean) => mean >= 2.4 && mean <= 2.6));
    }
  });

  it(checks.title("9.21"), () => {
    DAYS.forEach(({ masses }, index) => {
      const share = masses.outKg.carcass! / masses.carcassLiveKg;
      holds("9.21", `${NAMES[index]} ${share}`, share >= 0.508 && share <= 0.59);
    });
  });

  it(checks.title("9.27"), () => {
    for (const plan of PLANS) {
      for (const [name, low, high] of [
        ["blood", 0.03, 0.04],
        ["skins", 0.1, 0.15],
        ["viscera", 0.15, 0.2],
      ] as const) {
        const product = worked(plan)
          .flatMap((stage) => stage.byProducts)
          .find((each) => each.name === name)!;
        holds("9.27", `${plan.name} ${name}`, product.share >= low && product.share <= high);
      }
    }
  });

  it(checks.title("9.29"), () => {
    DAYS.forEach(({ masses }, index) => {
      const sum = (kilograms: Record<string, number>) => Object.values(kilograms).reduce((a, b) => a + b, 0);
      checks.exact(
        "9.29",
        NAMES[index]!,
        sum(masses.byProductsKg) + sum(masses.outKg) + masses.onLineKg,
        masses.liveKg,
        1e-9,
      );
    });
  });
});

function machine(plan: Plan, name: string) {
  const stage = worked(plan).find((each) => each.name === name)!;
  if (!("cycleSeconds" in stage)) throw new Error(`${name} is no station`);
  return stage.cycleSeconds;
}

function chiller(plan: Plan): Extract<Stage, { kind: "dwell" }> {
  const stage = plan.line.find(({ name }) => name === "chilling")!;
  if (stage.kind !== "dwell") throw new Error("the chiller is no dwell");
  return stage;
}

describe("limits", () => {
  it(checks.title("9.9 count"), () => {
    // Heads every 5 s, stunned at once (1 s), stuck in 9 s: the wait from stun to stick grows by 4 s a head: 0, 4, 8, 12, 16.
    const limits = [8, 10, 11.999, 12, 3].map((maxSeconds) => ({
      name: `within ${maxSeconds} s`,
      from: { stage: "stunning", moment: "end" as const },
      to: { stage: "sticking", moment: "start" as const },
      minSeconds: null,
      maxSeconds,
      source: "made for this check",
    }));
    const line = [station("stunning", 1, { buffer: Infinity }), station("sticking", 9, { buffer: Infinity })];
    const day = runChecked(planOf(stream({ family: "constant", value: 5 }, 5), line, { limits }));
    [2, 2, 2, 1, 4].forEach((beyond, index) => {
      checks.exact("9.9 count", limits[index]!.name, day.limits[index]!.beyond, beyond, 0);
    });
  });
});

describe("equipment effectiveness", () => {
  it(checks.title("7.1"), () => {
    const minutes = { plannedBusySeconds: 480, productionSeconds: 411, itemSeconds: 0.1, produced: 3720, good: 3646 };
    const found = oee(minutes);
    checks.printed("7.1", "A", found.availability!, "0.856250");
    checks.printed("7.1", "E", found.effectiveness!, "0.905109");
    checks.printed("7.1", "Q", found.quality!, "0.980108");
    checks.printed("7.1", "OEE", found.oee!, "0.759583");
    checks.exact("7.1", "A x E x Q", found.availability! * found.effectiveness! * found.quality!, found.oee!, 1e-12);
  });
});

checks.close();
