import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { readStudy, type Study } from "../../../../sim/asked/study/index.ts";
import { sampleFiles, samplePlan } from "../plan/samplePlan.ts";

const SCALDING = { kind: "station", name: "scalding", rate: "600 /h" };
const PLACES = { name: "places", path: "line.bleeding.places", from: 20, to: 40 };
const DWELL = { name: "dwell", path: "line[2].dwell", from: "2 min", to: "3 min" };
const LORRY = { name: "second lorry", path: "supply.loads[1].at", from: "11:00", to: "12:30" };

function read(design: unknown, more: Record<string, unknown> = {}): Study {
  const { study, faults } = readStudy({ name: "s", plan: samplePlan(), design, ...more }, sampleFiles);
  expect(faults.map(formatFault)).toEqual([]);
  return study as Study;
}

const named = ({ variants }: Study) => variants.map(({ name, levels }) => `${name}: ${levels.join(" ")}`);
const stages = (study: Study) => study.variants.map(({ plan }) => plan.line.map(({ name }) => name).join(" "));

describe("a list", () => {
  it("may put stages in and take things out", () => {
    const study = read({
      list: [
        { name: "scald", insert: [{ before: "line.skinning", element: SCALDING }] },
        { name: "no chill", remove: ["line.chilling", "limits"], set: { "line.skinning.buffer": 3 } },
      ],
    });
    expect(stages(study)).toEqual([
      "hanging stunning bleeding skinning chilling",
      "hanging stunning bleeding scalding skinning chilling",
      "hanging stunning bleeding skinning",
    ]);
    expect(study.variants[1]).toMatchObject({ insert: [{ side: "before", path: "line.skinning", element: SCALDING }] });
    expect(study.variants[2]).toMatchObject({
      remove: ["line.chilling", "limits"],
      set: { "line.skinning.buffer": 3 },
    });
    expect(study.design).toEqual({ kind: "list" });
  });
});

describe("factors", () => {
  it("may set several paths together", () => {
    const sets = [
      { path: "line.stunning.positions", levels: [1, 2] },
      { path: "line.stunning.buffer", levels: [0, 4] },
    ];
    const study = read({ factorial: { factors: [{ name: "stunning", sets }] } });
    expect(named(study)).toEqual(["base: 0", "stunning 2 + 4: 1"]);
    expect(study.factors[0]).toEqual({
      ...{ name: "stunning", path: "line.stunning.positions + line.stunning.buffer", levels: ["1 + 0", "2 + 4"] },
    });
    expect(study.variants[1]!.set).toEqual({ "line.stunning.positions": 2, "line.stunning.buffer": 4 });
  });

  it("may choose among whole alternatives, one of which may be the base as it is", () => {
    const options = [
      { name: "without" },
      { name: "with", insert: [{ after: "line.bleeding", element: SCALDING }] },
      {
        name: "instead",
        insert: [{ after: "line.bleeding", element: SCALDING }],
        remove: ["line.skinning", "sources[1]"],
      },
    ];
    const study = read({
      factorial: {
        factors: [
          { name: "scalding", options },
          { name: "places", path: "line.bleeding.places", levels: [40, 50] },
        ],
      },
    });
    expect(named(study)).toEqual([
      "base: 0 0",
      "scalding without, places 50: 0 1",
      "scalding with, places 40: 1 0",
      "scalding with, places 50: 1 1",
      "scalding instead, places 40: 2 0",
      "scalding instead, places 50: 2 1",
    ]);
    expect(stages(study)[5]).toBe("hanging stunning bleeding scalding chilling");
  });
});

describe("one at a time", () => {
  it("runs every level of every factor beside the base, the two ends of a range, and not the base again", () => {
    const buffer = { name: "buffer", path: "line.skinning.buffer", levels: [2, null], labels: ["two", "any"] };
    const study = read({ oneAtATime: { factors: [PLACES, DWELL, buffer] } });
    // The base has 40 places, a dwell of 150 s, which no end of the range is, and a buffer without limit.
    expect(named(study)).toEqual([
      "base: 1 -1 1",
      "places 20: 0 -1 1",
      "dwell 2 min: 1 0 1",
      "dwell 3 min: 1 1 1",
      "buffer two: 1 -1 0",
    ]);
    expect(study.design).toEqual({ kind: "one at a time" });
  });
});

describe("a Latin hypercube", () => {
  const study = read({ latinHypercube: { factors: [PLACES, DWELL, LORRY], points: 12 } });

  it("draws so many points, each level of a range from low to high", () => {
    expect(study.variants).toHaveLength(13);
    expect(study.variants[0]!.levels).toEqual([-1, -1, -1]);
    expect(study.variants[12]!.name).toBe("point 12");
    const dwell = study.factors[1]!.levels.map((level) => Number.parseFloat(level));
    expect(dwell).toEqual(dwell.toSorted((a, b) => a - b));
    expect(new Set(dwell).size).toBe(12);
  });

  it("sets what its levels say, in one slice of the range each", () => {
    for (const { levels, set } of study.variants.slice(1)) {
      expect(study.factors.map((factor, index) => factor.levels[levels[index]!])).toEqual(
        Object.values(set).map(String),
      );
    }
    const slices = study.variants
      .slice(1)
      .map(({ set }) => Math.floor((Number.parseFloat(String(set["line[2].dwell"])) - 2) * 12));
    expect(slices.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 12 }, (_, slice) => slice));
  });

  it("draws lists and whole numbers evenly, equal values being one level", () => {
    const few = { ...PLACES, from: 3, to: 5 };
    const kinds = { name: "buffer", path: "line.skinning.buffer", levels: [1, 8, null] };
    const drawn = read({ latinHypercube: { factors: [few, kinds], points: 12 } });
    expect(drawn.factors.map(({ levels }) => levels)).toEqual([
      ["3", "4", "5"],
      ["1", "8", "no limit"],
    ]);
    for (const factor of [0, 1]) {
      const counts = [0, 1, 2].map((level) => drawn.variants.filter(({ levels }) => levels[factor] === level).length);
      expect(counts).toEqual([4, 4, 4]);
    }
  });

  it("is drawn by the study's seed unless it has its own", () => {
    const design = { latinHypercube: { factors: [PLACES], points: 5 } };
    const own = { latinHypercube: { ...design.latinHypercube, seed: 9 } };
    expect(named(read(design, { seed: "9" }))).toEqual(named(read(own)));
    expect(read(own).factors).not.toEqual(read(design).factors);
    expect(read(own, { seed: "7" }).factors).toEqual(read(own).factors);
  });
});

describe("a screening", () => {
  const study = read({ screening: { factors: [PLACES, DWELL, LORRY], trajectories: 6 } });

  it("cuts ranges into levels, ends included", () => {
    expect(study.factors.map(({ levels }) => levels)).toEqual([
      ["20", "27", "33", "40"],
      ["2 min", "2.3333 min", "2.6667 min", "3 min"],
      ["11:00", "11:30", "12:00", "12:30"],
    ]);
  });

  it("has trajectories through its variants, neighbours of which differ in one factor", () => {
    if (study.design.kind !== "screening") throw new Error("no screening");
    expect(study.design.trajectories).toHaveLength(6);
    for (const points of study.design.trajectories) {
      expect(points).toHaveLength(4);
      points.slice(1).forEach((point, step) => {
        const [before, after] = [study.variants[points[step]!]!.levels, study.variants[point]!.levels];
        expect(after.filter((level, factor) => level !== before[factor])).toHaveLength(1);
      });
    }
  });

  it("runs a point that two trajectories share, or that is the base, once", () => {
    const crowded = read({ screening: { factors: [{ ...PLACES, from: 37, to: 40 }], trajectories: 20 } });
    expect(named(crowded).toSorted()).toEqual(expect.arrayContaining(["base: 3"]));
    expect(crowded.variants).toHaveLength(4);
    if (crowded.design.kind !== "screening") throw new Error("no screening");
    expect(crowded.design.trajectories.flat()).toContain(0);
  });
});
