import { describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { PLAIN_PROCEDURE, type Study, type Variant } from "../../../../sim/asked/study/index.ts";
import { type ResponseInfo, responsesOf } from "../../../../sim/day/observations/index.ts";
import { decide, decisionKeys, type Findings } from "../../../../sim/days/decision/index.ts";
import type { Decision, Why } from "../../../../sim/days/results/index.ts";

/** Invented: one crew of three at 20 EUR an hour, one machine at 25 000 EUR over 10 years of 250 days. */
const PLAN_JSON = {
  name: "Invented",
  day: { shifts: [{ name: "day", from: "06:00", to: "14:00" }] },
  supply: { stream: { interarrival: "5 s", heads: 100 } },
  crews: [{ name: "trim", people: 3, pay: "20 EUR/h" }],
  money: { currency: "EUR" },
  limits: [{ name: "waiting", from: "arrival", to: "end of trim", max: "10 min", source: "invented" }],
  line: [{ name: "trim", kind: "station", crew: "trim", positions: 3, cycle: "10 s" }],
};
const planOf = (changes: Record<string, unknown> = {}) => {
  const { plan, faults } = readPlan({ ...PLAN_JSON, ...changes }, { read: () => null } as never);
  if (plan === null) throw new Error(JSON.stringify(faults));
  return plan;
};
const PLAN = planOf();
const UNPRICED = planOf({ money: undefined, crews: [{ name: "trim", people: 3 }] });
const MACHINE = planOf({
  line: [
    {
      ...PLAN_JSON.line[0],
      ...{ crew: undefined, cycle: "9 s", capital: { price: "25000 EUR", life: 10, daysPerYear: 250 } },
    },
  ],
});

/** Around the mean by the given amount, in turn above and below: eight days. */
const days = (mean: number, spread = 0) => [1, -1, 1, -1, 1, -1, 1, -1].map((sign) => mean + sign * spread);
const FOUR = [3, 1, -1, -3, 2, 0, -2, 0];
/** Days of which the difference to `days(mean)` swings by so much. */
const swings = (mean: number, by: number) => FOUR.map((step) => mean + step * by);

type Given = Partial<Record<string, number | number[]>>;
const TODAY: Given = {
  ...{ finish: 30_000, overtime: 1200, carcasses: 100, "beyond.waiting": 0, "worst.waiting": 300 },
  ...{ "cost.processing": 1000, unfinished: 0, headsPerHour: 600, costPerHead: 10 },
};

function answerOf(
  asked: string,
  variants: readonly { name: string; given: Given; plan?: Variant["plan"]; set?: Record<string, unknown> }[],
  more: Partial<Study> & { findings?: Partial<Findings>; base?: Variant["plan"]; today?: Given } = {},
): Decision {
  const { findings = {}, base = PLAN, today = {}, ...study } = more;
  const list = [{ name: "base", given: {}, plan: base, set: {} }, ...variants];
  const infos = new Map(responsesOf(base).map((info): [string, ResponseInfo] => [info.key, info]));
  const values = list.map(({ given }) =>
    Object.fromEntries(
      Object.entries({ ...TODAY, ...today, ...given }).map(([key, value]) => [
        key,
        Array.isArray(value) ? value : days(value!, 0),
      ]),
    ),
  );
  const found = decide(
    {
      ...{ name: "s", question: "q", reader: "planner", seed: "1", replications: 8, confidence: 0.95 },
      ...{ responses: [asked], why: true, factors: [], design: { kind: "list" }, procedure: PLAIN_PROCEDURE },
      variants: list.map(({ name, plan = base, set = {} }) => ({
        ...{ name, set, plan, levels: [], insert: [], remove: [] },
      })),
      ...study,
    },
    [infos.get(asked)!],
    values,
    { whys: list.map(() => null), effects: null, ...findings },
  );
  if (found === null) throw new Error("nothing decided");
  return found;
}

const estimate = (mean: number, half = 0) => ({
  ...{ n: 8, mean, sd: 0, halfWidth: half, low: mean - half, high: mean + half, min: mean, max: mean },
});
/** The line ran so much of a day of 30,000 s at the pace of each stage, and waited so much for animals. */
const why = (stages: Record<string, number>, animals = 0) =>
  ({
    total: estimate(30_000),
    stages: Object.entries(stages).map(([stage, share]) => ({ stage, share: estimate(share, 0.01) })),
    parts: [{ cause: "arrivals", stage: "", detail: "", label: "", seconds: estimate(animals) }],
  }) as unknown as Why;

it("says of a plan with figures that are not known that its ranges are luck alone, how many are guessed, and what counts them in", () => {
  const unsure = (...kinds: string[]) =>
    planOf({
      uncertain: kinds.map((kind, index) => ({
        ...{
          name: `figure ${index}`,
          paths: [["line.trim.cycle", "supply.stream.interarrival"][index]!],
          factor: { uniform: { min: 0.9, max: 1.1 } },
          kind,
        },
      })),
    });
  const nextOf = (base: Variant["plan"]) => answerOf("finish", [], { base }).next.join(" ");
  expect(nextOf(PLAN)).not.toMatch(/gambrel doubt/);
  expect(nextOf(unsure("guess", "measured"))).toMatch(
    /ranges are luck alone, .* called 2 figures of the plan uncertain, 1 of them by guess\. `gambrel doubt` counts that in/,
  );
  expect(nextOf(unsure("guess"))).toMatch(/called one figure of the plan uncertain, by guess\./);
  expect(nextOf(unsure("measured"))).toMatch(/called one figure of the plan uncertain\. /);
});

describe("is it worth it", () => {
  const person = (given: Given) => [{ name: "one more", given, set: { "crews.trim.people": 4 } }];

  it("yes, where it saves more than it costs", () => {
    const found = answerOf("finish", person({ finish: 28_200, "cost.processing": 940 }));
    expect(found).toMatchObject({ kind: "worth it", inferred: true, answer: "yes", best: 1 });
    expect(found.verdict).toBe("Yes: with “one more” work ends 30 min earlier, and it saves 60 EUR a day.");
    expect(found.words[0]).toMatch(/^“one more” comes to about 15.000 EUR a year \(250 working days, assumed\)\.$/);
  });

  it("no, where it costs more than it saves, however much earlier work ends", () => {
    const found = answerOf("finish", person({ finish: 28_200, "cost.processing": 1115 }));
    expect(found).toMatchObject({ answer: "no", best: 0 });
    expect(found.verdict).toBe(
      "No: with “one more” work ends 30 min earlier, but it costs 115 EUR a day more than it saves.",
    );
  });

  it("no, with what the line waits for instead, where nothing is gained", () => {
    const findings = { whys: [why({ trim: 0.2 }, 22_320), null] };
    const found = answerOf("finish", person({ finish: 29_950, "cost.processing": 1145 }), { findings });
    expect(found.verdict).toBe(
      "No: with “one more” work ends 50 s earlier, less than the 5 min that matter, and it costs 145 EUR a day more than it saves; today the line waits for animals (6 h 12 of the day).",
    );
  });

  it("too small, where it is certain and below what matters to the asker", () => {
    const less = person({ finish: 29_400, "cost.processing": 1000 });
    expect(answerOf("finish", less).answer).toBe("yes");
    const found = answerOf("finish", less, { matters: { finish: 900 } });
    expect(found).toMatchObject({ answer: "too small", best: 0, matters: { size: 900, asked: true } });
    expect(found.verdict).toBe(
      "Hardly: with “one more” work ends 10 min earlier, less than the 15 min that matter, and it costs about as much as it brings.",
    );
  });

  it("cannot be told, with how many days would tell, where luck is larger than what matters", () => {
    const found = answerOf("finish", person({ finish: swings(29_700, 600) }), { base: UNPRICED });
    expect(found).toMatchObject({ answer: "undecided", best: null });
    expect(found.verdict).toMatch(
      /^It cannot be told yet: with “one more” 8 simulated days cannot tell what it does to/,
    );
    // Half-width 2.365 * sd / sqrt(8) with sd = 600 * 2 = 1003 s against 300 s: 8 * (1003 / 300)^2, in tens.
    expect(found.next[0]).toBe("About 90 simulated days of each would tell: add --replications 90.");
  });

  it("no, where more heads would be outside a limit, whatever it saves", () => {
    const found = answerOf("finish", person({ finish: 26_000, "cost.processing": 500, "beyond.waiting": 0.05 }));
    expect(found).toMatchObject({ answer: "no", best: 0 });
    expect(found.verdict).toMatch(/^No: with “one more” it does harm: 5.0 % instead of 0.0 % of heads/);
  });

  it("of several says which are and which are not", () => {
    const found = answerOf("finish", [
      ...person({ finish: 28_200, "cost.processing": 1115 }),
      { name: "more places", given: { finish: 29_100, "cost.processing": 977 }, set: { "line.trim.buffer": 9 } },
    ]);
    expect(found.verdict).toBe("Worth it: “more places”. Not worth it: “one more”.");
    expect(found).toMatchObject({ answer: "yes", best: 2 });
    expect(found.next[0]).toBe("The plan has no price for “more places”: set what it costs against what it brings.");
  });

  it("money decides only where the plan knows it, and never over heads outside a limit", () => {
    const unpriced = answerOf("finish", person({ finish: 28_200 }), { base: UNPRICED });
    expect(unpriced.verdict).toBe("Yes: with “one more” work ends 30 min earlier.");
    expect(unpriced.rows[1]!.money).toBeNull();
    const welfare = answerOf("beyond.waiting", person({ "beyond.waiting": 0.01, "cost.processing": 1200 }), {
      today: { "beyond.waiting": 0.08 },
    });
    expect(welfare.answer).toBe("yes");
    expect(welfare.verdict).toContain("but it costs 200 EUR a day more than it saves");
  });

  it("a machine's price is back after price / (saving before its own charge)", () => {
    // Charge 25,000 / (10 * 250) = 10 EUR a day; saves 40 with it, 50 before it: 25,000 / (50 * 250) = 2 years.
    const machine = [{ name: "machine", given: { finish: 28_000, "cost.processing": 960 }, plan: MACHINE }];
    const found = answerOf("finish", machine);
    expect(found.rows[1]!.money).toMatchObject({ price: 25_000, daysPerYear: 250, paybackYears: 2 });
    expect(found.words[0]).toContain("its price is back after 2.0 years");
  });

  it("a plan that handles more heads is reckoned by the cost a head at today's heads", () => {
    const more = person({ finish: 30_000, carcasses: 110, "cost.processing": 1045 });
    // 1045 / 110 * 100 = 950: 50 less than today.
    expect(answerOf("finish", more).rows[1]!.money!.perDay.mean).toBeCloseTo(50, 9);
  });
});

describe("which is best", () => {
  const four = (given: Given[]) => given.map((each, index) => ({ name: "abcd"[index]!, given: each }));

  it("takes the best of those that do no harm, and names what may be as good", () => {
    const found = answerOf(
      "finish",
      four([
        { finish: swings(28_000, 60) },
        { finish: swings(28_050, 61) },
        { finish: 29_500 },
        { finish: 20_000, "beyond.waiting": 0.5 },
      ]),
      { base: UNPRICED },
    );
    expect(found).toMatchObject({ kind: "best", answer: "yes", best: 1 });
    expect(found.verdict).toMatch(/^Take “a”: work ends 33 min/);
    expect(found.words.join(" ")).toContain("Left out because they do harm: “d”");
    expect(found.words.join(" ")).not.toContain("Every other plan is shown");
  });

  it("stays with today's plan where the best of the others gains too little", () => {
    const found = answerOf(
      "finish",
      four([{ finish: 29_900 }, { finish: 29_950 }, { finish: 30_500 }, { finish: 31_000 }]),
    );
    expect(found).toMatchObject({ answer: "no", best: 0 });
    expect(found.verdict).toMatch(
      /^Stay with today's plan: with the best of the others, “a”, work ends 100 s|1 min 40 s/,
    );
  });

  it("does not rank by the end of work what handles other heads", () => {
    const found = answerOf("finish", four([{ finish: 20_000, carcasses: 60 }, {}, {}, {}]), { base: UNPRICED });
    expect(found.answer).toBe("undecided");
    expect(found.verdict).toBe(
      "The plans handle different numbers of heads, so the end of work alone cannot rank them.",
    );
  });
});

describe("what if", () => {
  const asked = { kind: "what if" as const };
  const tries = (...given: Given[]) => given.map((each, index) => ({ name: ["A", "B", "C"][index]!, given: each }));

  it("tells when work ends, what overtime costs, and that no limit is broken", () => {
    const today = { "cost.overtimePay": 20 };
    const found = answerOf("finish", tries({ finish: 32_880, "cost.overtimePay": 130, "cost.processing": 1070 }), {
      ...asked,
      today,
    });
    expect(found).toMatchObject({ kind: "what if", inferred: false, answer: "told", best: null });
    expect(found.verdict).toBe(
      "With “A” work ends 48 min later, at 15:08, and overtime costs 110 EUR a day more; no limit is broken in 8 simulated days.",
    );
    expect(found.words).toEqual(["All in all the day costs 70 EUR more with “A”."]);
    expect(found.next[0]).toMatch(/^Compare what would help against it: more tries after `--or`/);
  });

  it("does not tell of a carcass more or less, which is luck", () => {
    const found = answerOf("finish", tries({ finish: 32_880, carcasses: 1001 }), {
      ...asked,
      today: { carcasses: 1000 },
    });
    expect(found.verdict).toBe("With “A” work ends 48 min later, at 15:08; no limit is broken in 8 simulated days.");
  });

  it("does not call it news that matters where the day ends as it does today", () => {
    const found = answerOf("finish", tries({ finish: 30_060 }), asked);
    expect(found.verdict).toBe(
      "With “A” work ends as it does today (less than 5 min of difference); no limit is broken in 8 simulated days.",
    );
    expect(found.next).toEqual([]);
  });

  it("names the limit that is newly broken, and not one that is broken as much today", () => {
    const newly = answerOf("finish", tries({ "beyond.waiting": 0.05 }), asked);
    expect(newly.verdict).toMatch(
      /; it does harm: 5\.0 % instead of 0\.0 % of heads would be outside the limit 'waiting'\.$/,
    );
    const same = answerOf("finish", tries({ "beyond.waiting": 0.05 }), { ...asked, today: { "beyond.waiting": 0.05 } });
    expect(same.verdict).toMatch(/; no limit is broken more than today\.$/);
  });

  it("names every limit that is broken more, the worst first", () => {
    const limit = { ...PLAN_JSON.limits[0], name: "resting" };
    const base = planOf({ limits: [...PLAN_JSON.limits, limit] });
    const given = { "beyond.waiting": 0.05, "beyond.resting": 0.4 };
    const today = { "beyond.resting": 0.1, "worst.resting": 700 };
    const found = answerOf("finish", tries(given), { ...asked, base, today });
    expect(found.verdict).toMatch(
      /it does harm: 40(\.0)? % of the heads are outside 'resting' \(today 10(\.0)? %\) and 5(\.0)? % of the heads are outside 'waiting' \(today 0(\.0)? %\)\.$/,
    );
  });

  it("cannot tell where luck is larger than what matters, and says how many days would", () => {
    const found = answerOf("finish", tries({ finish: swings(29_700, 600) }), { ...asked, base: UNPRICED });
    expect(found).toMatchObject({ answer: "undecided", best: null });
    expect(found.next[0]).toBe("About 90 simulated days of each would tell (`gambrel try --days 90`).");
  });

  it("of several names the one that copes best among themselves, however much better today is", () => {
    const found = answerOf("finish", tries({ finish: 34_000 }, { finish: 32_000 }, { finish: 36_000 }), asked);
    expect(found).toMatchObject({ answer: "told", best: 2 });
    expect(found.verdict).toMatch(
      /^“B” copes best: with it work ends 33\.?3? min later, at 14:53; no limit is broken in 8 simulated days\.$/,
    );
    expect(found.words.filter((line) => line.startsWith("With"))).toHaveLength(2);
  });

  it("says so where they cope alike, and where the days cannot tell", () => {
    const alike = answerOf("finish", tries({ finish: 34_000 }, { finish: swings(34_060, 10) }), asked);
    expect(alike).toMatchObject({ answer: "told", best: 1 });
    expect(alike.verdict).toMatch(
      /^“A” and “B” cope alike \(less than 5 min apart\); with “A” work ends 66\.?7? min later/,
    );
    const open = answerOf("finish", tries({ finish: 34_000 }, { finish: swings(34_060, 900) }), asked);
    expect(open).toMatchObject({ answer: "undecided", best: null });
    expect(open.verdict).toMatch(
      /^8 simulated days cannot tell which of “A” and “B” copes best: end of work on the line 15:27 with “A” and 15:28 with “B”\.$/,
    );
  });

  it("takes none that does harm, and says so where only one does none, or all do", () => {
    const [fast, slow] = [{ finish: 28_000, "beyond.waiting": 0.05 }, { finish: 34_000 }];
    const one = answerOf("finish", tries(fast, slow), asked);
    expect(one).toMatchObject({ best: 2 });
    expect(one.verdict).toMatch(/^Only “B” does no harm: with it work ends/);
    const all = answerOf("finish", tries(fast, { ...fast, finish: 29_000 }), asked);
    expect(all.best).toBeNull();
    expect(all.verdict).toMatch(/^Every try does harm: with “A” 5\.0 % .* 'waiting'; with “B” 5\.0 % .* 'waiting'\.$/);
    expect(all.words.join(" ")).toMatch(/With “A” .*does harm.*With “B” .*does harm/);
  });

  it("does not call fewer heads harm where fewer were asked for, and does not rank by the end of work what handles others", () => {
    const plan = planOf({ supply: { stream: { interarrival: "5 s", heads: 80 } } });
    const less = { finish: 28_000, carcasses: 80 };
    const found = answerOf("finish", [{ name: "A", given: less, plan }], asked);
    expect(found.verdict).toMatch(
      /^With “A” work ends 33\.?3? min earlier, at 13:47, and 20 fewer carcasses come out; no limit/,
    );
    expect(answerOf("finish", [{ name: "A", given: less }], asked).verdict).toMatch(
      /does harm: it handles 20 fewer heads/,
    );
    const two = answerOf(
      "finish",
      [
        { name: "A", given: less, plan },
        { name: "B", given: { finish: 31_000 } },
      ],
      asked,
    );
    expect(two).toMatchObject({ best: null });
    expect(two.verdict).toBe(
      "Overtime comes on more than half of the simulated days throughout: with “A” (8 of 8), today's heads (8 of 8) and “B” (8 of 8).",
    );
  });
});

it("names what is best at no cost, where the best costs money", () => {
  const found = answerOf("headsPerHour", [
    { name: "dear", given: { headsPerHour: 660, "cost.processing": 1200 } },
    { name: "free", given: { headsPerHour: 630 } },
    { name: "none", given: {} },
    { name: "saves", given: { "cost.processing": 900 } },
  ]);
  expect(found.verdict).toBe(
    "Take “dear”: the line makes 60 carcasses/h more, but it costs 200 EUR a day more than it saves.",
  );
  expect(found.words).toContain("At no cost: with “free” the line makes 30 carcasses/h more.");
  expect(found.words).toContain("For money “saves” is better: it saves 100 EUR a day.");
});

describe("where today's plan stays", () => {
  const four = (given: Given[]) => given.map((each, index) => ({ name: "abcd"[index]!, given: each }));

  it("nothing names it as a rival of itself, and those that are as good are told by how far they are known", () => {
    const found = answerOf(
      "finish",
      four([{ finish: 29_900 }, { finish: swings(30_010, 900) }, { finish: 31_000 }, { finish: 30_020 }]),
      { base: UNPRICED },
    );
    expect(found).toMatchObject({ answer: "no", best: 0 });
    expect(found.words.join(" ")).not.toContain("today's plan and");
    expect(found.words).toEqual([
      "Less than 5 min from today's plan: “a” and “d”.",
      "Not told apart from today's plan yet: “b”.",
    ]);
  });

  it("it does not, where another saves money and loses nothing that matters", () => {
    const found = answerOf("finish", four([{ finish: 29_900, "cost.processing": 940 }, {}, {}, {}]));
    expect(found).toMatchObject({ answer: "yes", best: 1 });
    expect(found.verdict).toMatch(
      /^For money take “a”: it saves 60 EUR a day; in end of work .* no plan tried is better/,
    );
  });
});

describe("where the gain is shown and the money is not", () => {
  const open = { finish: 28_200, "cost.processing": swings(1000, 30) };

  it("both are told", () => {
    const found = answerOf("finish", [{ name: "A", given: open }]);
    expect(found).toMatchObject({ answer: "undecided", best: null });
    expect(found.verdict).toMatch(
      /^With “A” work ends 30 min earlier, but whether that pays cannot be told yet \(−\d+ to \+\d+ EUR a day\)\.$/,
    );
    expect(found.next[0]).toMatch(/simulated days of each would tell whether it pays: add --replications/);
  });

  it("of several that is a group of its own", () => {
    const found = answerOf("finish", [
      { name: "A", given: open },
      { name: "B", given: { finish: swings(29_700, 600) } },
    ]);
    expect(found.verdict).toBe("Shown to help, but whether it pays cannot be told yet: “A”. Cannot be told yet: “B”.");
  });
});

describe("how many heads", () => {
  const asked = { kind: "what if" as const };
  const lots = (days: number, heads: number): Given => ({
    ...{ carcasses: heads, finish: 30_000 + 60 * heads, headsPerHour: 600 },
    overtime: Array.from({ length: 8 }, (_, day) => (day < days ? 600 : 0)),
  });
  const told = (today: number, ...list: [days: number, heads: number][]) =>
    answerOf(
      "finish",
      list.map(([days, heads]) => ({ name: `${heads}`, given: lots(days, heads) })),
      {
        ...asked,
        base: UNPRICED,
        today: { overtime: today },
      },
    ).verdict;
  const verdict = (...list: [days: number, heads: number][]) => told(0, ...list);

  it("from which number on overtime is common, that is on more than half of the days", () => {
    expect(verdict([7, 140], [4, 120])).toBe(
      "Overtime is common from “140” on (7 of 8 simulated days), and not with “120” (4 of 8) and today's heads (0 of 8).",
    );
  });

  it("that it is in none, or in all", () => {
    expect(verdict([4, 140], [0, 120])).toBe(
      "Overtime comes on half of the simulated days at most: with today's heads (0 of 8), “120” (0 of 8) and “140” (4 of 8).",
    );
    expect(told(600, [8, 140], [5, 90])).toMatch(
      /^Overtime comes on more than half of the simulated days throughout: with “90” \(5 of 8\)/,
    );
  });
});

describe("for its reader", () => {
  const person = [{ name: "one more", given: { finish: 28_200, "cost.processing": 940, "beyond.waiting": 0.02 } }];
  const more = planOf({ crews: [{ ...PLAN_JSON.crews[0], people: 4 }] });
  const told = (reader: string) =>
    answerOf("finish", [{ ...person[0]!, plan: more }], {
      ...{ reader, today: { "beyond.waiting": 0.02 } },
      findings: { whys: [why({ trim: 0.6 }), null] },
    });

  it("an owner hears of the money first, an engineer of the day", () => {
    expect(told("owner").verdict).toBe("Yes: with “one more” it saves 60 EUR a day, and work ends 30 min earlier.");
    expect(told("process engineer").verdict).toBe(
      "Yes: with “one more” work ends 30 min earlier, and it saves 60 EUR a day.",
    );
  });

  it("a veterinarian hears of the animals first, and of every plan that does harm", () => {
    expect(told("official veterinarian").verdict).toMatch(
      /^Today 2 % .*of the animals are outside 'waiting'; with none of the plans compared are more\. Yes: with “one more”/,
    );
    const harmful = answerOf("finish", [{ name: "fast", given: { "beyond.waiting": 0.5 } }], {
      reader: "veterinarian",
    });
    expect(harmful.verdict).toMatch(
      /^Today no animal is outside a time limit in 8 simulated days; harm is shown with “fast”\. No: /,
    );
    const unwatched = answerOf("finish", [], { reader: "veterinarian", base: planOf({ limits: [] }) });
    expect(unwatched.verdict).toMatch(/^The plan watches no time limit, so it is not known how long animals wait\./);
  });

  it("a planner hears how many people it takes, a trainer why", () => {
    expect(told("shift planner").words[0]).toBe("People in the largest shift: 3 today, 4 with “one more”.");
    expect(told("trainer").words[0]).toMatch(/^The reason to look for: today trim sets the pace \(5 h of the day\)/);
    expect(told("somebody").words[0]).toMatch(/^“one more” comes to about/);
  });
});

describe("how much is enough", () => {
  const factor = [{ name: "places", path: "line.trim.buffer", levels: ["2", "4", "8", "no limit"] }];
  const levels = (ends: number[]) => ends.map((finish, level) => ({ name: `places ${level}`, given: { finish } }));
  const asked = (ends: number[], today: number) => {
    const list = levels(ends);
    const at = list.map((_, level) => level + (level >= today ? 1 : 0));
    return answerOf("finish", list, {
      ...{ factors: factor, design: { kind: "factorial" }, base: UNPRICED },
      variants: [today, ...at].map((level, index) => ({
        ...{ name: index === 0 ? "base" : list[index - 1]!.name, levels: [level], set: {}, insert: [], remove: [] },
        plan: UNPRICED,
      })),
    });
  };

  it("the smallest amount from which more gains less than matters", () => {
    const found = asked([28_000, 27_900, 27_850], 0);
    expect(found).toMatchObject({ kind: "how much", answer: "told", best: 1 });
    expect(found.verdict).toBe(
      "4 (places) is enough: work ends 33.3 min earlier. Beyond that no step tried gains 5 min on average.",
    );
  });

  it("is not said where the days do not show that it gains", () => {
    const found = asked([swings(29_000, 2000), 31_000, 31_500] as never, 0);
    expect(found).toMatchObject({ kind: "how much", answer: "undecided", best: null });
    expect(found.verdict).toMatch(
      /^It cannot be told yet; by the averages 4 \(places\) would do, but 8 simulated days cannot tell what it does to/,
    );
    expect(found.next[0]).toMatch(/simulated days of each would tell/);
  });

  it("today's, where that is enough", () => {
    expect(asked([31_000, 29_990, 29_980], 1).verdict).toMatch(/^Today's 4 \(places\) is enough/);
  });

  it("the most that was tried, where every step still gains", () => {
    const found = asked([29_000, 28_000, 27_000], 0);
    expect(found.verdict).toMatch(/^no limit \(places\) gains most of those tried: work ends 50 min earlier\.$/);
    expect(found.words[0]).toBe("More may gain more still: try larger ones, too.");
  });
});

describe("other questions", () => {
  it("where the bottleneck is, and where it goes", () => {
    const whys = [why({ hanging: 0.6, trim: 0.2 }), why({ trim: 0.5, hanging: 0.3 }), why({ hanging: 0.2 }, 20_000)];
    const found = answerOf(
      "finish",
      [
        { name: "a", given: {} },
        { name: "b", given: {} },
      ],
      {
        ...{ kind: "bottleneck", findings: { whys } },
      },
    );
    expect(found.verdict).toBe(
      "The bottleneck today is hanging (5 h of the day); with “a” it moves to trim; with “b” the line waits for animals instead.",
    );
  });

  it("says so where two stations may set the pace as long", () => {
    const found = answerOf("finish", [], {
      kind: "bottleneck",
      findings: { whys: [why({ hanging: 0.4, trim: 0.395 })] },
    });
    expect(found.verdict).toContain("though another station may set it as long");
  });

  it("whether a limit is kept, and with which plan", () => {
    const kept = [{ name: "later lorry", given: { "beyond.waiting": 0 } }];
    const found = answerOf("beyond.waiting", kept, { kind: "limit", today: { "beyond.waiting": 0.08 } });
    expect(found).toMatchObject({ answer: "no", best: 1 });
    expect(found.verdict).toBe("No: 8 % (8 to 8 %) of the heads are outside 'waiting'; it is kept with “later lorry”.");
    const never = answerOf("beyond.waiting", []);
    expect(never.verdict).toBe("Yes: no head was outside 'waiting' in 8 simulated days.");
    // 1 - 0.025^(1/8) = 0.3694: the tables of Clopper and Pearson 1934 have 0.369 for none of eight.
    expect(never.words).toContain(
      "On other days it may still happen: 8 days leave open up to 37 % of days with such a head.",
    );
  });

  it("when work ends, on average and on single days", () => {
    const found = answerOf("finish", [], { today: { finish: swings(30_600, 300) } });
    expect(found).toMatchObject({ kind: "what will it be", answer: "told" });
    expect(found.verdict).toMatch(/^Work ends at 14:30 \(14:2\d to 14:3\d\) on average\.$/);
    expect(found.words[0]).toBe("Single days lie between 14:15 and 14:45 (8 simulated).");
  });
});

describe("what a day comes to", () => {
  it("overtime by how many days have it, and how long it is on average", () => {
    const found = answerOf("finish", [], { today: { overtime: [600, 0, 0, 600, 0, 1200, 0, 0] } });
    expect(found.words).toContain("Overtime on 3 of 8 simulated days, 5 min on average.");
  });

  it("money of a day also by month and year, that of a head not", () => {
    // 120 EUR a day, 250 days: 30,000 a year, 2,500 a month.
    const found = answerOf("cost.overtimePay", [], { today: { "cost.overtimePay": 120 } });
    expect(found.words[0]).toMatch(
      /^About 2.500 EUR a month, 30.000 EUR a year \(250 working days a year, assumed\)\.$/,
    );
    expect(answerOf("costPerHead", []).words.join(" ")).not.toContain("a month");
  });
});

describe("the table", () => {
  it("has what else the study asks for, after what an owner asks of any day", () => {
    const infos = new Map(responsesOf(PLAN).map((info) => [info.key, info]));
    const days8 = (value: number) => days(value);
    const keys = ["finish", "queue.trim.mean", "queue.trim.max"];
    const values = [10, 12].map((wait) => ({
      ...Object.fromEntries(Object.entries(TODAY).map(([key, value]) => [key, days8(value as number)])),
      ...{ "queue.trim.mean": days8(wait), "queue.trim.max": days8(3 * wait) },
    }));
    const variant = { set: {}, plan: PLAN, levels: [], insert: [], remove: [] };
    const found = decide(
      {
        ...{ name: "s", question: "q", reader: "planner", seed: "1", replications: 8, confidence: 0.95 },
        ...{ responses: keys, why: true, factors: [], design: { kind: "list" }, procedure: PLAIN_PROCEDURE },
        variants: ["base", "a"].map((name) => ({ ...variant, name })),
      },
      keys.map((key) => infos.get(key)!),
      values,
      { whys: [null, null], effects: null },
    )!;
    expect(found.columns.map(({ key }) => key).slice(-2)).toEqual(["queue.trim.mean", "queue.trim.max"]);
    expect(found.rows[1]!.estimates["queue.trim.max"]!.mean).toBe(36);
  });

  it("has the deciding response first, money and people, and limits only where one is broken", () => {
    const found = answerOf("headsPerHour", [{ name: "a", given: { "beyond.waiting": 0.02 } }]);
    expect(found.columns.map(({ key }) => key)).toEqual([
      "headsPerHour",
      "finish",
      "overtime",
      "beyond.waiting",
      "costPerHead",
    ]);
    expect(found.rows.map(({ people }) => people)).toEqual([3, 3]);
    expect(answerOf("finish", [{ name: "a", given: {} }]).columns.map(({ key }) => key)).not.toContain(
      "beyond.waiting",
    );
  });

  it("rests on keys that every plan with them gives", () => {
    const known = new Set(responsesOf(PLAN).map(({ key }) => key));
    expect(decisionKeys(PLAN).filter((key) => !known.has(key))).toEqual([]);
    expect(decisionKeys(PLAN)).toEqual(
      expect.arrayContaining(["finish", "cost.processing", "beyond.waiting", "worst.waiting"]),
    );
  });

  it("nothing is decided by one day, or without a response", () => {
    const study = { ...({} as Study), variants: [], procedure: PLAIN_PROCEDURE };
    expect(decide(study, [], [{}], { whys: [], effects: null })).toBeNull();
  });
});
