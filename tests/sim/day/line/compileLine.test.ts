import { describe, expect, it } from "vitest";
import { CREW_RULES, type Stunned, type TimeLimit, type Vessel } from "../../../../sim/asked/plan/plan.ts";
import { compileLine, NO_LIMIT, SLOT_HELP, SLOT_HOLD, SLOT_LATE } from "../../../../sim/day/line/index.ts";
import { handling, load } from "../../../support/loads.ts";
import {
  chain,
  constant,
  crateStep,
  crew,
  manual,
  onChain,
  planOf,
  saturated,
  station,
  stream,
} from "../../../support/plans.ts";
import { withDay } from "../../../support/withDay.ts";

describe("compileCrews", () => {
  const line = [
    manual("a", 1, "x"),
    chain("c", 4, 1, [onChain("w", 0, 2, 1, { crews: ["y", "x"], peoplePerPosition: 1 })]),
    manual("b", 1, "y"),
    station("m", 1),
  ];
  const crews = [crew("x", [2, 5], { rule: "fixed order", walkSeconds: 3 }), crew("y", 1), crew("idle", 1)];

  it("lists the stages that each crew may work at, in line order, stations on chains included", () => {
    const compiled = compileLine(planOf(saturated(1), line, { crews })).crews;
    expect(Array.from(compiled.stationFrom)).toEqual([0, 2, 4, 4]);
    // Stages: a 0, c 1, w 2, b 3, m 4.
    expect(Array.from(compiled.stations)).toEqual([0, 2, 2, 3]);
    expect(Array.from(compiled.peopleMax)).toEqual([5, 1, 1]);
    expect(CREW_RULES[compiled.rule[0]!]).toBe("fixed order");
    expect(compiled.walkSeconds[0]).toBe(3);
  });

  it("marks the crews that work on the protected stretch", () => {
    const plan = withDay(planOf(saturated(1), line, { crews }), { safeStop: { from: "b", to: "m" } });
    expect(Array.from(compileLine(plan).crews.protected)).toEqual([0, 1, 0]);
  });
});

const into = (vessel: string) => [{ name: "blood", share: 0.1, of: "live weight" as const, vessel }];

const tank: Vessel = { name: "tank", capacityKg: 10, emptyAtKg: 8, emptyingSeconds: 5, crew: "yard", whenFull: "stop" };

const bin: Vessel = { ...tank, name: "bin", crew: null, whenFull: "spill" };

describe("compileVessels", () => {
  it("knows the stages that feed each vessel, who empties it, and whether it stops them", () => {
    const line = [
      station("a", 1, { byProducts: into("tank") }),
      chain("c", 4, 1, [onChain("w", 0, 1, 1, { byProducts: into("bin") })]),
      station("b", 1, { byProducts: into("tank") }),
    ];
    const { vessels } = compileLine(planOf(saturated(1), line, { vessels: [tank, bin], crews: [crew("yard", 1)] }));
    expect(vessels.names).toEqual(["tank", "bin"]);
    expect(Array.from(vessels.feederFrom)).toEqual([0, 2, 3]);
    // Stages: a 0, c 1, w 2, b 3.
    expect(Array.from(vessels.feeder)).toEqual([0, 3, 2]);
    expect(Array.from(vessels.stopsFeeders)).toEqual([1, 0]);
    expect(Array.from(vessels.crew)).toEqual([0, -1]);
  });
});

describe("compileChains", () => {
  it("keeps each chain's ring and, by stage, the windows of the stations on it", () => {
    const line = [
      station("a", 1),
      chain("c", 9, 2, [onChain("v", 0, 2, 1), onChain("w", 4, 3, 1, { ifUnfinished: "pass" })], {
        unfinishedTo: "trim",
      }),
      chain("d", 5, 3, [], { shackles: { count: 7, backSeconds: 60 } }),
      station("trim", 1, { offLine: true }),
    ];
    const { chains, stages } = compileLine(planOf(saturated(1), line));
    expect(stages.names).toEqual(["a", "c", "v", "w", "d", "trim"]);
    expect(Array.from(chains.stage)).toEqual([1, 4]);
    expect(Array.from(chains.stationCount)).toEqual([2, 0]);
    expect(Array.from(chains.places)).toEqual([9, 5]);
    expect(Array.from(chains.shackles)).toEqual([NO_LIMIT, 7]);
    expect(Array.from(chains.backSeconds)).toEqual([0, 60]);
    expect(Array.from(chains.unfinishedTo)).toEqual([5, -1]);
    expect(Array.from(chains.windowFrom)).toEqual([-1, -1, 0, 4, -1, -1]);
    expect(Array.from(chains.windowTo)).toEqual([-1, -1, 2, 7, -1, -1]);
    expect(Array.from(chains.stopsChain)).toEqual([0, 0, 1, 0, 0, 0]);
    expect(Array.from(stages.chain)).toEqual([-1, 0, 0, 0, 1, -1]);
  });
});

const limit = (name: string, from: TimeLimit["from"], to: TimeLimit["to"]): TimeLimit => {
  return { name, from, to, minSeconds: null, maxSeconds: 9, source: "" };
};

const line = [station("stun", 1), chain("c", 4, 1, [onChain("stick", 1, 1, 1)]), station("last", 1)];

const stunned: Stunned = {
  from: "stun",
  to: "stick",
  hold: true,
  late: { afterSeconds: 8, help: "stick there", takesSeconds: 5, crew: "b" },
};

describe("compileStunned", () => {
  it("knows the two stations, who helps how, and the limits that a second stun begins anew", () => {
    const limits = [
      limit("whole", { stage: null, moment: "entry" }, { stage: "stick", moment: "start" }),
      limit("short", { stage: "stun", moment: "end" }, { stage: "stick", moment: "start" }),
      limit("long", { stage: "stun", moment: "start" }, { stage: "stick", moment: "end" }),
      limit("further", { stage: "stun", moment: "end" }, { stage: "last", moment: "start" }),
    ];
    const plan = planOf(saturated(1), line, { limits, stunned, crews: [crew("a", 1), crew("b", 1)] });
    const found = compileLine(plan).stunned!;
    expect({ ...found, limits: Array.from(found.limits) }).toEqual({
      from: 0,
      to: 2,
      hold: true,
      limits: [1, 2],
      late: { afterSeconds: 8, takesSeconds: 5, sticks: true, crew: 1 },
    });
  });

  it("gives its events the last ranks of an instant, and none to a plan without", () => {
    const { slots } = compileLine(planOf(saturated(1), line, { stunned: { ...stunned, late: null } }));
    expect(Array.from(slots.kind).slice(-3)).toEqual([SLOT_HOLD, SLOT_LATE, SLOT_HELP]);
    const without = compileLine(planOf(saturated(1), line));
    expect(without.stunned).toBeNull();
    expect([without.slots.hold, without.slots.late, without.slots.help]).toEqual([-1, -1, -1]);
    expect(without.slots.count).toBe(slots.count - 3);
  });
});

describe("compileSupply", () => {
  const toHanging = [crateStep("unloading", 1), crateStep("sorting", 1), crateStep("feeding", 1)];
  const supplyOf = (back: boolean) => {
    const plan = planOf({ kind: "loads", loads: [load("lorry", 5, 3, 2)] }, [station("hanging", 1)], {
      liveHandling: back
        ? handling(toHanging, [crateStep("washer", 1)], { cratesAtHanging: 2, fleet: { crates: 9, awaySeconds: 60 } })
        : handling(toHanging),
    });
    return compileLine(plan).supply;
  };

  it("knows where crates leave the lorry, where they wait, and where the way back begins", () => {
    expect(supplyOf(true)).toMatchObject({
      kind: "loads",
      unloading: 0,
      feeding: 2,
      firstBack: 3,
      cratesAtHanging: 2,
      fleet: 9,
      awaySeconds: 60,
      loads: [{ name: "lorry", seconds: 5, crates: 3, headsPerCrate: 2 }],
    });
  });

  it("without a way back has no first stage of it, and crates without number", () => {
    expect(supplyOf(false)).toMatchObject({ firstBack: -1, fleet: NO_LIMIT });
  });

  it("keeps single heads and the endless supply as they are", () => {
    const line = [station("a", 1)];
    expect(compileLine(planOf(saturated(7), line)).supply).toMatchObject({ kind: "saturated", heads: 7 });
    expect(compileLine(planOf(stream(constant(3), 4, "turn away"), line)).supply).toMatchObject({
      kind: "stream",
      heads: 4,
      turnAway: true,
    });
  });
});
