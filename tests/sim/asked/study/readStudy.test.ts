import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { readStudy, type Study, type StudyOptions } from "../../../../sim/asked/study/index.ts";
import { sampleFiles, samplePlan } from "../plan/samplePlan.ts";

// biome-ignore lint/suspicious/noExplicitAny: tests write what a study may not hold
type Loose = any;

function studyWith(design: unknown, more: Loose = {}) {
  return { name: "places", plan: samplePlan(), design, ...more };
}

function sound(json: unknown, options?: StudyOptions): Study {
  const { study, faults } = readStudy(json, sampleFiles, options);
  expect(faults.map(formatFault)).toEqual([]);
  return study as Study;
}

function messages(json: unknown, options?: StudyOptions): string[] {
  return readStudy(json, sampleFiles, options).faults.map(formatFault);
}

const PLACES = { name: "places", path: "line.bleeding.places", levels: [20, 40, null] };
const DWELL = { name: "dwell", path: "line[2].dwell", levels: ["2.5 min", "3 min"] };

describe("a study that names only what it must", () => {
  it("is the base alone, with every default", () => {
    const { study, basePlan } = readStudy({ name: "one", plan: samplePlan() }, sampleFiles);
    expect(study).toMatchObject({
      name: "one",
      question: "",
      reader: "process engineer",
      seed: "1",
      replications: 20,
      confidence: 0.95,
      responses: [],
      factors: [],
    });
    expect(study?.variants.map(({ name, levels, set }) => ({ name, levels, set }))).toEqual([
      { name: "base", levels: [], set: {} },
    ]);
    expect(basePlan).toEqual(samplePlan());
  });

  it("may give its seed as a whole number, which is the same as the text", () => {
    expect(sound({ name: "one", plan: samplePlan(), seed: 2026 }).seed).toBe("2026");
  });
});

describe("a list of variants", () => {
  const study = sound(
    studyWith(
      {
        list: [
          { name: "12 places", set: { "line.skinning.buffer": 12 } },
          {
            name: "breakdown-free, one more",
            set: { "line.skinning.breakdowns": [], 'crews["skinning"].people.late': 3 },
          },
          {
            name: "an optional key anew",
            set: { "line.stunning.breakdowns": [{ name: "jam", uptime: "1 h", repair: "1 min" }] },
          },
          { name: "a whole stage", set: { "line[4]": { name: "cooling", kind: "dwell", places: 9, dwell: "1 h" } } },
        ],
      },
      { baseName: "as it is" },
    ),
  );

  it("begins with the base under its name", () => {
    expect(study.variants.map(({ name }) => name)).toEqual([
      "as it is",
      "12 places",
      "breakdown-free, one more",
      "an optional key anew",
      "a whole stage",
    ]);
  });

  it("sets what each variant names and nothing else", () => {
    const [base, places, people, jam, cooling] = study.variants.map(({ plan }) => plan);
    expect(base!.line[3]).toMatchObject({ buffer: Number.POSITIVE_INFINITY });
    expect(places!.line[3]).toEqual({ ...base!.line[3], buffer: 12 });
    expect(people!.crews[1]!.people).toEqual([3, 3]);
    expect(people!.line[3]).toMatchObject({ breakdowns: [] });
    expect(jam!.line[1]).toMatchObject({ breakdowns: [{ name: "jam", uptimeSeconds: { value: 3600 } }] });
    expect(cooling!.line[4]).toMatchObject({ name: "cooling", places: 9 });
    expect(cooling!.line.slice(0, 4)).toEqual(base!.line.slice(0, 4));
  });

  it("keeps what was set as the file wrote it", () => {
    expect(study.variants[1]!.set).toEqual({ "line.skinning.buffer": 12 });
    expect(study.variants[1]!.levels).toEqual([]);
  });
});

describe("a full factorial", () => {
  it("runs every combination, the last factor changing fastest, and merges the one that equals the base", () => {
    const study = sound(studyWith({ factorial: { factors: [PLACES, DWELL] } }));
    expect(study.variants.map(({ name, levels }) => [name, levels])).toEqual([
      ["base", [1, 0]],
      ["places 20, dwell 2.5 min", [0, 0]],
      ["places 20, dwell 3 min", [0, 1]],
      ["places 40, dwell 3 min", [1, 1]],
      ["places no limit, dwell 2.5 min", [2, 0]],
      ["places no limit, dwell 3 min", [2, 1]],
    ]);
    expect(study.variants[4]!.set).toEqual({ "line.bleeding.places": null, "line[2].dwell": "2.5 min" });
    expect(study.factors).toEqual([
      { name: "places", path: "line.bleeding.places", levels: ["20", "40", "no limit"] },
      { name: "dwell", path: "line[2].dwell", levels: ["2.5 min", "3 min"] },
    ]);
  });

  it("knows the base by its meaning: 2.5 min is 150 s, and a default spelt out is the default", () => {
    const positions = { name: "positions", path: "line.stunning.positions", levels: [1, 2] };
    expect(sound(studyWith({ factorial: { factors: [DWELL, positions] } })).variants[0]!.levels).toEqual([0, 0]);
  });

  it("runs all combinations when the base is none of them, and marks what the base has of no level", () => {
    const other = { ...DWELL, levels: ["1 min", "2 min"] };
    const study = sound(studyWith({ factorial: { factors: [PLACES, other] } }));
    expect(study.variants).toHaveLength(7);
    expect(study.variants[0]!.levels).toEqual([1, -1]);
  });

  it("shows labels where it has them", () => {
    const travel = {
      name: "way",
      path: "line.hanging.cycle",
      levels: [{ exponential: { mean: "5 s" } }, { gamma: { mean: "5 s", cv: 0.2 } }],
    };
    const plain = sound(studyWith({ factorial: { factors: [travel] } }));
    expect(plain.factors[0]!.levels).toEqual(["exponential (mean 5 s)", "gamma (mean 5 s, cv 0.2)"]);
    const labelled = sound(studyWith({ factorial: { factors: [{ ...travel, labels: ["uneven", "even"] }] } }));
    expect(labelled.variants[1]!.name).toBe("way uneven");
  });
});

describe("files", () => {
  const planText = JSON.stringify(samplePlan());

  it("are taken from the folder of the study, those of the plan from the folder of the plan, each read once", () => {
    const asked: string[] = [];
    const files = {
      readText(path: string): string {
        asked.push(path);
        return path.endsWith(".csv") ? sampleFiles.readText("times.csv") : planText;
      },
    };
    const json = { name: "s", plan: "../plans/x.json", design: { factorial: { factors: [PLACES] } } };
    expect(readStudy(json, files).faults).toEqual([]);
    expect(asked).toEqual(["../plans/x.json", "../plans/times.csv"]);
  });

  it("that cannot be read, or are no JSON, are told of", () => {
    const json = { name: "s", plan: "p.json" };
    expect(messages(json)).toEqual([
      "plan: 'p.json' cannot be read (no such file); allowed: the path of a plan file, from the folder of the study; check the path",
    ]);
    expect(readStudy(json, { readText: () => "{" }).faults.map(formatFault)).toEqual([
      "p.json, line 1, column 2: the text ends here; allowed: a key in double quotes; put the key in double quotes",
    ]);
  });

  it("put the path of the plan file before its faults", () => {
    const text = JSON.stringify({ ...samplePlan(), target: 600 });
    expect(
      readStudy(
        { name: "s", plan: "p.json" },
        { readText: (path) => (path === "p.json" ? text : "head,seconds\n1,2\n") },
      ).faults.map(formatFault),
    ).toEqual(['p.json: target: 600 has no unit; allowed: a rate in /d, /h, /min or /s; write for example "620 /h"']);
  });
});

describe("faults", () => {
  it("of a path that names nothing come with the nearest name, for each variant", () => {
    const list = [
      { name: "a", set: { "line.skining.buffer": 1 } },
      { name: "b", set: { "line.skinning.bufer": 3 } },
      { name: "c", set: { "line.skinning.buffer.x": 3 } },
      { name: "d", set: { "line..x": 3 } },
      { name: "e", set: JSON.parse('{"__proto__": 1, "line.skinning.constructor": 2}') },
    ];
    expect(messages(studyWith({ list }))).toEqual([
      "variant 'a': line.skining.buffer: 'skining' is not a name in 'line'; allowed: 'hanging', 'stunning', 'bleeding', 'skinning', 'chilling'; did you mean 'skinning'?",
      // The plan room's own tests pin the whole list of a station's keys.
      expect.stringMatching(
        /^variant 'b': line\[3\]\.bufer: unknown key; allowed: 'name', .*; did you mean 'buffer'\?$/,
      ),
      "variant 'c': line.skinning.buffer.x: 'line.skinning.buffer' has nothing inside; allowed: a path that ends there or before; shorten the path and give the whole value",
      'variant \'d\': line..x: this is not a path; allowed: keys, names and [indexes], such as "line.skinning.buffer"; put names with dots or brackets in [""], such as line["cut no. 2"].positions',
      "variant 'e': __proto__: '__proto__' is not a key in the plan; allowed: '$schema', 'name', 'notes', 'target', 'sources', 'day', 'supply', 'liveHandling', 'crews', 'line', 'limits'; write one of these",
      "variant 'e': line.skinning.constructor: 'constructor' is not a key in 'line.skinning'; allowed: 'name', 'section', 'kind', 'positions', 'buffer', 'cycle', 'crew', 'breakdowns'; write one of these",
    ]);
    expect(({} as Loose).polluted).toBeUndefined();
  });

  it("of the base are told once, under the base, however many variants share them", () => {
    const plan: Loose = samplePlan();
    plan.target = 600;
    const list = [
      { name: "a", set: { "line.skinning.buffer": 1 } },
      { name: "b", set: { "line.skinning.buffer": -2 } },
    ];
    expect(messages(studyWith({ list }, { plan }))).toEqual([
      'plan.target: 600 has no unit; allowed: a rate in /d, /h, /min or /s; write for example "620 /h"',
      "variant 'b': line[3].buffer: -2 is too small; allowed: 0 or more",
    ]);
  });

  it("of one level are told once, with the first combination that has them", () => {
    const factors = [{ name: "places", path: "line.skinning.buffer", levels: ["many", 2] }, DWELL];
    expect(messages(studyWith({ factorial: { factors } }))).toEqual([
      "variant 'places many, dwell 2.5 min': line[3].buffer: \"many\" is of the wrong kind; allowed: a number or null",
    ]);
  });

  it("of the study itself come together with those of the plan", () => {
    const plan: Loose = samplePlan();
    plan.target = 600;
    const study = {
      nam: "x",
      plan,
      replications: 0,
      confidence: 95,
      seed: 1.5,
      design: { list: [{ name: "a", set: {} }] },
    };
    expect(messages(study)).toEqual([
      'name: missing; allowed: 1 to 60 printable characters, none of them a space at either end; write a name such as "skinning"',
      'seed: 1.5 is not a seed; allowed: a text of 1 to 60 characters, or a whole number; write for example "2026"',
      "replications: 0 is too small; allowed: 1 or more",
      "confidence: 95 is too large; allowed: 0.9999 or less",
      'design.list[0].set: an empty object changes nothing; allowed: paths with their new values; write for example { "line.skinning.buffer": 12 }',
      "nam: unknown key; allowed: '$schema', 'name', 'question', 'asks', 'matters', 'reader', 'plan', 'baseName', 'seed', 'replications', 'antithetic', 'controls', 'confidence', 'errorRate', 'selection', 'responses' and 2 more; did you mean 'name'?",
      'plan.target: 600 has no unit; allowed: a rate in /d, /h, /min or /s; write for example "620 /h"',
    ]);
  });

  it.each([
    [undefined, 'plan: missing; allowed: the path of a plan file, or a plan; write for example "../plans/small.json"'],
    [5, 'plan: 5 is not a plan; allowed: the path of a plan file, or a plan; write for example "../plans/small.json"'],
    [
      "",
      'plan: an empty text is not a plan; allowed: the path of a plan file, or a plan; write for example "../plans/small.json"',
    ],
  ])("of a plan given as %j", (plan, message) => {
    expect(messages({ name: "x", plan })).toEqual([message]);
  });

  it("of names that stand twice", () => {
    const list = [
      { name: "a", set: { "line.skinning.buffer": 1 } },
      { name: "a", set: { "line.skinning.buffer": 2 } },
      { name: "base", set: { "line.skinning.buffer": 3 } },
    ];
    expect(messages(studyWith({ list }, { responses: ["x", "x"] }))).toEqual([
      "design.list[1].name: 'a' appears twice among the variants, the base included; allowed: each name once; rename or delete one of them",
      "design.list[2].name: 'base' appears twice among the variants, the base included; allowed: each name once; rename or delete one of them",
      "responses[1]: 'x' appears twice among the responses; allowed: each name once; rename or delete one of them",
    ]);
  });

  it("of factors that disturb each other, repeat levels or lack labels", () => {
    const factors = [
      PLACES,
      { name: "places", path: "line.bleeding", levels: [1, 1], labels: ["one"] },
      { name: "same label", path: "line.skinning.buffer", levels: [1, 2], labels: ["x", "x"] },
    ];
    expect(messages(studyWith({ factorial: { factors } }))).toEqual([
      "design.factorial.factors[1].name: 'places' appears twice among the factors; allowed: each name once; rename or delete one of them",
      "design.factorial.factors[1].levels[1]: '1' appears twice among the levels; allowed: each name once; rename or delete one of them",
      "design.factorial.factors[1].labels: 1 labels; allowed: 2, one for each level",
      "design.factorial.factors[2].labels[1]: 'x' appears twice among the labels; allowed: each name once; rename or delete one of them",
      "design.factorial.factors[1].path: it sets what the factor 'places' sets too; allowed: a path of its own; join the two factors",
    ]);
  });

  it("of ten thousand combinations and more, without working them out", () => {
    const levels = Array.from({ length: 110 }, (_, index) => index + 1);
    const factors = [
      { ...PLACES, levels },
      { name: "buffer", path: "line.skinning.buffer", levels: levels.slice(0, 91) },
    ];
    expect(messages(studyWith({ factorial: { factors } }))).toEqual([
      "design.factorial: 10010 combinations; allowed: 10000 or less; remove levels or factors",
    ]);
  });

  it("of an empty design", () => {
    expect(messages(studyWith({}))).toEqual([
      "design: an empty object; allowed: exactly one of list, factorial, oneAtATime, latinHypercube, screening; keep one",
    ]);
  });

  it("of shape and of names at once: what sound keys say of the plan does not wait for the others", () => {
    const knownResponses = () => [{ key: "finish", format: "clock" as const, better: "less" as const }];
    const design = { list: [{ name: "a", set: { "line.skining.buffer": 4 } }] };
    const found = messages(studyWith(design, { nmae: 1, replications: 0, responses: ["headOut"] }), { knownResponses });
    expect(found.map((line) => line.split(":")[0])).toEqual(["replications", "nmae", "variant 'a'", "responses[0]"]);
    const faulty = messages(studyWith({ lst: [] }, { responses: ["headOut"] }), { knownResponses });
    expect(faulty.map((line) => line.split(":")[0])).toContain("responses[0]");
    const twins = { list: [design.list[0], design.list[0]] };
    const named = messages(studyWith(twins, { responses: ["headOut"] }), { knownResponses });
    expect(named.map((line) => line.split(":")[0])).toEqual(["design.list[1].name", "responses[0]"]);
  });

  it("of responses that the plan cannot give, where the known ones are passed in", () => {
    const knownResponses = () => [
      { key: "headsOut", format: "number", better: "more" } as const,
      { key: "finish", format: "clock", better: "less" } as const,
    ];
    expect(messages(studyWith(undefined, { responses: ["finish", "headOut"] }), { knownResponses })).toEqual([
      "responses[1]: 'headOut' is not a result; did you mean 'headsOut'? gambrel check --responses PLAN lists all that there are",
    ]);
    expect(sound(studyWith(undefined, { responses: ["finish"] }), { knownResponses }).responses).toEqual(["finish"]);
  });

  it.each([null, [], 5])("of a study that is %j", (json) => {
    expect(messages(json)).toHaveLength(1);
  });
});

describe("readStudy", () => {
  it("leaves the JSON as it was", () => {
    const json = studyWith({ factorial: { factors: [PLACES, DWELL] } });
    const before = structuredClone(json);
    readStudy(json, sampleFiles);
    expect(json).toEqual(before);
  });
});

it("tells how many variants were read, before each of them", () => {
  const told: string[] = [];
  sound(studyWith({ factorial: { factors: [PLACES, DWELL] } }), {
    read: (done, total) => told.push(`${done}/${total}`),
  });
  expect(told).toEqual(["0/6", "1/6", "2/6", "3/6", "4/6", "5/6"]);
});
