import { describe, expect, it } from "vitest";
import { formatFault, inputKind, namedPlan, readPlan } from "../../../../../sim/asked/plan/index.ts";
import { sampleFiles, samplePlan } from "../samplePlan.ts";

// biome-ignore lint/suspicious/noExplicitAny: these rows write what a plan may not hold
type Loose = any;

/** A week of the sample plan, with what a test changes in it. */
function weekly(change: (week: Loose, plan: Loose) => void = () => {}): Loose {
  const plan: Loose = samplePlan();
  plan.week = {
    days: [{ name: "Monday" }, { name: "Tuesday" }, { name: "Wednesday", closed: true }, { name: "Thursday" }],
  };
  change(plan.week, plan);
  return plan;
}

function messages(change: (week: Loose, plan: Loose) => void): string[] {
  return readPlan(weekly(change), sampleFiles).faults.map(formatFault);
}

function week(change: (week: Loose, plan: Loose) => void = () => {}) {
  const { plan, faults } = readPlan(weekly(change), sampleFiles);
  expect(faults.map(formatFault)).toEqual([]);
  return plan!.week!;
}

describe("a week", () => {
  it("has the plan's own day on every day that says nothing else, and none on a closed one", () => {
    const { days } = week();
    const { plan } = readPlan(samplePlan(), sampleFiles);
    expect(days.map(({ name, startSeconds }) => [name, startSeconds / 3600])).toEqual([
      ["Monday", 5],
      ["Tuesday", 29],
      ["Wednesday", 48],
      ["Thursday", 77],
    ]);
    expect(days[2]!.plan).toBeNull();
    expect(days[0]!.plan).toEqual({ ...plan!, day: { ...plan!.day, overnight: [] } });
  });

  it("lets a day have other hours, lorries and people, people ill, stages down, and anything else by its path", () => {
    const { days } = week(({ days }) => {
      Object.assign(days[1], {
        start: "04:00",
        shifts: [
          { name: "early", from: "05:00", to: "14:00" },
          { name: "late", from: "14:00", to: "25:30" },
        ],
        breaks: [],
        loads: [{ name: "one", at: "05:10", crates: 10, headsPerCrate: 12 }],
        people: { hanging: 4 },
        ill: { hanging: 1, skinning: 2 },
        down: [{ stage: "skinning", from: "09:00", to: "10:30" }],
        set: { "line.skinning.buffer": 7 },
      });
    });
    const tuesday = days[1]!.plan!;
    expect(days[1]!.startSeconds).toBe((24 + 4) * 3600);
    expect(tuesday.day.shifts.map(({ fromSeconds }) => fromSeconds / 3600)).toEqual([1, 10]);
    expect(tuesday.supply).toMatchObject({ kind: "loads", loads: [{ name: "one", atSeconds: 4200 }] });
    expect(tuesday.crews.map(({ people }) => people)).toEqual([
      [3, 3],
      [1, 0],
    ]);
    expect(tuesday.day.breaks).toMatchObject([
      {
        name: "skinning down 1",
        atSeconds: 5 * 3600,
        lengthSeconds: 5400,
        stages: ["skinning"],
        crews: [],
        ends: "at its time",
      },
    ]);
    expect(tuesday.line.find(({ name }) => name === "skinning")).toMatchObject({ buffer: 7 });
    // The others are as before.
    expect(days[0]!.plan!.crews[0]!.people).toEqual([6, 6]);
  });

  it("keeps in mind how many are there by plan where somebody steps in for those who are ill", () => {
    const { days } = week(({ days }, plan) => {
      plan.crews[1].cover = [plan.crews[0].name];
      days[1].ill = { [plan.crews[1].name]: 1 };
    });
    const before = days[0]!.plan!.crews[1]!;
    const tuesday = days[1]!.plan!.crews[1]!;
    expect(tuesday.people).toEqual(before.people.map((there) => Math.max(0, there - 1)));
    expect(tuesday.cover).toEqual(before.cover);
  });

  it("begins with what is there on its first working day alone", () => {
    const { days } = week(({ days }, plan) => {
      days[0].closed = true;
      plan.atStart = { crates: [{ crates: 2, headsPerCrate: 5, for: "8 h" }] };
    });
    expect(days.map(({ plan }) => plan?.atStart?.crates.length)).toEqual([undefined, 1, undefined, undefined]);
  });

  it("reads hours of the night from the day's own start, the day's before the week's", () => {
    const { days } = week((week) => {
      const chiller = week.chiller;
      delete week.chiller;
      week.overnight = { [chiller ?? "chilling"]: "15:00" };
      week.days[1].overnight = { chilling: "16:00" };
    });
    expect(days.map(({ plan }) => plan?.day.overnight)).toEqual([
      [{ stage: "chilling", untilSeconds: 10 * 3600 }],
      [{ stage: "chilling", untilSeconds: 11 * 3600 }],
      undefined,
      [{ stage: "chilling", untilSeconds: 10 * 3600 }],
    ]);
  });

  it("puts orders into the order of their times, counted from the first midnight", () => {
    const { orders } = week((week) => {
      week.orders = [
        { name: "late", day: "Thursday", by: "12:00", kilograms: "900 kg" },
        { name: "early", day: "Monday", by: "15:00", carcasses: 300 },
      ];
    });
    expect(orders).toEqual([
      { name: "early", bySeconds: 15 * 3600, carcasses: 300, kilograms: null },
      { name: "late", bySeconds: (72 + 12) * 3600, carcasses: null, kilograms: 900 },
    ]);
  });

  it.each<[string, (week: Loose, plan: Loose) => void, string[]]>([
    [
      "a crew that there is not",
      ({ days }) => (days[1].ill = { skining: 1 }),
      ["week.days[1]: ill.skining: 'skining' is no crew; allowed: 'hanging', 'skinning'; did you mean 'skinning'?"],
    ],
    [
      "more ill than there are",
      ({ days }) => (days[1].ill = { hanging: 7 }),
      ["week.days[1]: ill.hanging: 7 ill of 6 people; allowed: at most 6; write how many are missing"],
    ],
    [
      "a path that leads nowhere",
      ({ days }) => (days[0].set = { "line.skining.buffer": 3 }),
      [
        "week.days[0]: set[\"line.skining.buffer\"]: 'skining' is not a name in 'line'; allowed: 'hanging', 'stunning', 'bleeding', 'skinning', 'chilling'; did you mean 'skinning'?",
      ],
    ],
    [
      "a shift that the plan's people do not know",
      ({ days }) => (days[0].shifts = [{ name: "day", from: "06:00", to: "26:00" }]),
      [],
    ],
    ["another plant on one day", ({ days }) => (days[3].set = { crews: [] }), []],
    [
      "two days of one name",
      ({ days }) => (days[1].name = "Monday"),
      ["week.days[1].name: 'Monday' appears twice among the days; allowed: each name once; rename one of them"],
    ],
    [
      "an order for a day that there is not, and of nothing",
      (week) => (week.orders = [{ name: "rush", day: "Friday", by: "10:00" }]),
      [
        "week.orders[0].day: 'Friday' is no day of the week; allowed: 'Monday', 'Tuesday', 'Wednesday', 'Thursday'; did you mean 'Monday'?",
        'week.orders[0].carcasses: the order says neither how many nor what weight; allowed: either "carcasses" or "kilograms"; keep one of the two',
      ],
    ],
    [
      "a stage in which animals bleed, as one to stay in overnight",
      (week) => (week.overnight = { bleeding: "15:00" }),
      ["week.overnight.bleeding: nobody may stay in 'bleeding' overnight; allowed: 'chilling'; name a chiller"],
    ],
    [
      "days without any work",
      ({ days }) => {
        for (const day of days) day.closed = true;
      },
      ["week.days: no day has work; allowed: at least one; open a day"],
    ],
    [
      "a warm-up of the whole week",
      (week) => {
        week.warmUp = 2;
        week.days.length = 3;
      },
      ["week.warmUp: none of the days after the first 2 has work; allowed: fewer days of warm-up; lower it"],
    ],
    [
      "a date that there is not",
      (week) => (week.begins = "2031-02-30"),
      ['week.begins: there is no 2031-02-30; allowed: a date as year-month-day; write for example "2031-03-17"'],
    ],
    [
      "a supply without end",
      (_, plan) => {
        plan.supply = { saturated: { heads: 100 } };
        plan.liveHandling = null;
      },
      [
        "supply.saturated: the first stage never runs out of heads, so no day ends by itself; allowed: loads or a stream; say when animals come, or leave out the week",
      ],
    ],
  ])("refuses %s", (_, change, expected) => {
    const found = messages(change);
    expect(found.length).toBeGreaterThan(0);
    if (expected.length > 0) expect(found).toEqual(expected);
  });
});

describe("a week in a file of its own", () => {
  const files = {
    readText: (path: string) =>
      path === "plants/sample.json" ? JSON.stringify(samplePlan()) : sampleFiles.readText(path),
  };
  const file = { plan: "plants/sample.json", name: "our week", week: { days: [{ name: "Monday" }] } };

  it("is the plan that it names, with its own keys in place of that plan's", () => {
    const { json } = namedPlan(file, files);
    expect(json).toEqual({ ...samplePlan(), name: "our week", week: file.week });
    expect(inputKind(file)).toBe("plan");
  });

  it("says which file is not there or no JSON", () => {
    expect(
      namedPlan(file, {
        readText: () => {
          throw Object.assign(new Error("x"), { code: "ENOENT" });
        },
      }).fault,
    ).toMatchObject({ path: "plan" });
    expect(namedPlan(file, { readText: () => "{" }).fault!.path).toMatch(/^plants\/sample\.json, /);
  });
});
