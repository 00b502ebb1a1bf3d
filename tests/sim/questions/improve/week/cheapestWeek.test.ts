import { beforeAll, describe, expect, it } from "vitest";
import { formatFault } from "../../../../../sim/asked/plan/index.ts";
import { countDesigns, type Improvement, improve, readImprove } from "../../../../../sim/questions/improve/index.ts";
import { NO_FILES } from "../../../../support/demands.ts";
import { improveQuestion, simulateHere } from "../../../../support/improving.ts";

type Json = Record<string, unknown>;

const PAY = 20;
const FACTOR = 1.5;
const SHIFT_HOURS = 1;
const SECONDS_PER_HEAD = 10;

/** `lorries` of a hundred heads each that all stand there when work begins. All invented. */
function dayOf(name: string, lorries: number, more: Json = {}): Json {
  const repeat = lorries === 1 ? {} : { repeat: { every: "1 min", times: lorries } };
  return { name, loads: [{ name: "farm", at: "05:30", crates: 10, headsPerCrate: 10, ...repeat }], ...more };
}

/** A line of one step: a head takes a person ten seconds, never more or less. */
function planOf(days: Json[], week: Json = {}, more: Json = {}): Json {
  return {
    ...{ name: "invented", notes: "Invented for tests." },
    day: { start: "05:00", shifts: [{ name: "day", from: "06:00", to: "07:00" }] },
    supply: { loads: dayOf("", 1).loads },
    liveHandling: { unloading: { perCrate: "1 s" }, lairageCrates: 500, feeding: { perCrate: "1 s" } },
    crews: [{ name: "line", people: 2, pay: `${PAY} EUR/h` }],
    money: { currency: "EUR", overtimeFactor: FACTOR },
    line: [{ name: "hanging", kind: "station", positions: 4, cycle: `${SECONDS_PER_HEAD} s`, crew: "line" }],
    week: { days, ...week },
    ...more,
  };
}

/** What a day of one crew costs, by hand: everybody is paid to the end of the shift, and to the end of work at the overtime's rate. */
function cost(people: number, lorries: number): number {
  const over = Math.max(0, (lorries * 100 * SECONDS_PER_HEAD) / people / 3600 - SHIFT_HOURS);
  return people * PAY * (SHIFT_HOURS + FACTOR * over);
}

const QUICK = { search: { days: 2, designs: 20, finalists: 4 }, firstStage: 4, atMost: 4, difference: 1 };

function question(plan: Json, week: Json, more: Json = {}): Json {
  return { name: "week", plan, goal: "cost", allocate: { week }, ...QUICK, ...more };
}

async function found(json: Json): Promise<Improvement> {
  return (await improve(improveQuestion(json), { simulate: simulateHere })).improvement;
}

const people = (on: string, more: Json = {}) => ({ people: { crew: "line", on, from: 1, to: 4, ...more } });
const lastLorry = { day: { load: "farm", on: "Monday", days: ["Tuesday", "Wednesday"], lorries: 1 } };

describe("the cheapest week", () => {
  const days = [dayOf("Monday", 2), dayOf("Tuesday", 8, { people: { line: 1 } }), dayOf("Wednesday", 13)];
  let all: Improvement;
  beforeAll(async () => {
    all = await found(question(planOf(days), { among: ["Monday", "Tuesday", "Wednesday"].map((on) => people(on)) }));
  });

  it("has each day's cheapest number of people, and costs what they cost by hand", () => {
    const lorries = [2, 8, 13];
    const cheapest = lorries.map((count) => [1, 2, 3, 4].toSorted((a, b) => cost(a, count) - cost(b, count))[0]!);
    expect(cheapest).toEqual([1, 2, 3]);
    const { set, goal } = all.recommended!;
    expect(set).toEqual(
      Object.fromEntries(
        ["Monday", "Tuesday", "Wednesday"].map((day, row) => [
          `week.days.${day}.set`,
          { "crews.line.people": cheapest[row] },
        ]),
      ),
    );
    // The crate and the last head take some seconds more than the hand reckons.
    expect(
      Math.abs(goal!.mean - lorries.reduce((sum, count, row) => sum + cost(cheapest[row]!, count), 0)),
    ).toBeLessThan(1);
  });

  it("is told as what to do, with money of a week and weeks counted as weeks", () => {
    expect(all.verdict).toMatch(
      /^Yes: have one person fewer at line on Monday and have one person more at line on Tuesday and Wednesday: cost of the week without the animals is 39\.8 EUR lower; work ends on average at/,
    );
    expect(all.next.join(" ")).toMatch(/farms, drivers, crews/);
    expect(all.words.join(" ")).toMatch(/new weeks/);
    expect(all.words.join(" ")).not.toMatch(/\bdays\b/);
    expect(all.period).toBe("week");
  });

  it("moves people between days where no more are at hand", async () => {
    const two = [dayOf("Monday", 2), dayOf("Tuesday", 8, { people: { line: 1 } })];
    const asked = question(planOf(two), { mostPeople: 3, among: [people("Monday"), people("Tuesday")] });
    const { recommended, allocated, effort } = await found(asked);
    expect(recommended!.counts!.map((count, row) => allocated.elements[row]!.time!.moments[count])).toEqual(["1", "2"]);
    // One and one, one and two, two and one.
    expect(effort.designsAllowed).toBe(3);
    expect(countDesigns(improveQuestion(asked).space)).toBe(3);
  });

  it("brings a lorry on another day where that saves overtime", async () => {
    const { verdict, recommended } = await found(
      question(planOf([dayOf("Monday", 9), dayOf("Tuesday", 2), dayOf("Wednesday", 7)]), { among: [lastLorry] }),
    );
    expect(verdict).toContain("let the last lorry of “farm” come on Tuesday instead of Monday");
    const [monday, tuesday] = ["Monday", "Tuesday"].map((day) => recommended!.set[`week.days.${day}.set`] as Json);
    expect(monday!["supply.loads"]).toMatchObject([{ name: "farm", repeat: { times: 8 } }]);
    expect(tuesday!["supply.loads"]).toMatchObject([{ name: "farm" }, { name: "farm from Monday", at: "05:38" }]);
    const saved = cost(2, 9) - cost(2, 8);
    expect(Math.abs(recommended!.gain!.mean - saved)).toBeLessThan(0.5);
  });

  it("keeps the lorry where an order needs its animals sooner", async () => {
    const orders = [{ name: "hotel", day: "Monday", by: "09:00", carcasses: 850 }];
    const plan = planOf([dayOf("Monday", 9), dayOf("Tuesday", 2)], { orders });
    const among = [{ day: { ...lastLorry.day, days: ["Tuesday"] } }];
    const open = await found(question(plan, { among }));
    expect(open.recommended!.isBase).toBe(true);
    expect(open.tried.map(({ harm }) => harm)).toContain("100 % instead of 0 % of the orders would be late");
    const asked = await found(question(plan, { among }, { orders: "5 %" }));
    expect(asked.recommended!.isBase).toBe(true);
    expect(asked.words).toContain("Orders: none was late in 4 weeks; at most 5 % may be.");
  });

  it("keeps an order that is late today, and says so before the money", async () => {
    const orders = [{ name: "hotel", day: "Tuesday", by: "06:45", carcasses: 600 }];
    const plan = planOf([dayOf("Monday", 2), dayOf("Tuesday", 5, { people: { line: 1 } })], { orders });
    const { verdict, answer, recommended } = await found(
      question(plan, { among: [people("Tuesday")] }, { orders: "5 %" }),
    );
    // Monday makes two hundred of them; the other four hundred take two people three quarters of an hour.
    expect(recommended!.set).toEqual({ "week.days.Tuesday.set": { "crews.line.people": 2 } });
    expect(verdict).toMatch(/100 % of the orders are late today, then 0 %/);
    expect(answer).toMatch(/yes|told/);
  });

  it("moves hours of one day: the lorry whose animals would wait, and a shift to when they are there", async () => {
    const lorry = (name: string, at: string) => ({ name, at, crates: 20, headsPerCrate: 10 });
    const limits = [{ name: "wait", from: "arrival", to: "start of hanging", max: "20 min", source: "invented" }];
    const plan = planOf(
      [
        dayOf("Monday", 1, { loads: [lorry("first", "06:00"), lorry("second", "06:00")] }),
        dayOf("Tuesday", 1, { loads: [lorry("late", "06:30")] }),
      ],
      {},
      { limits },
    );
    const { recommended, verdict } = await found(
      question(
        plan,
        {
          among: [
            { load: { name: "second", on: "Monday", from: "05:45", to: "06:30" } },
            { shift: { name: "day", on: "Tuesday", from: "06:00", to: "06:30" } },
          ],
        },
        { goal: "overtime", limits: [{ limit: "wait", beyond: "1 %" }], difference: "1 min" },
      ),
    );
    // Two people hang two hundred heads in 16 min 40 s: the second lorry's last head waits 33 min if it comes with the first.
    expect(recommended!.set["week.days.Monday.set"]).toEqual({ "supply.loads.second.at": "06:15" });
    expect(verdict).toContain("let the lorry “second” come 15 min later on Monday, at 06:15");
    expect(recommended!.limits[0]!.found!.mean).toBe(0);
  });
});

describe("what a question of a week refuses", () => {
  const plan = planOf([dayOf("Monday", 3), dayOf("Tuesday", 2), { name: "Sunday", closed: true }]);
  it.each<[Json, RegExp]>([
    [people("Sunday"), /people\.on: 'Sunday' is no working day that is counted; allowed: 'Monday', 'Tuesday'/],
    [people("Mondya"), /did you mean 'Monday'/],
    [people("Monday", { crew: "lines" }), /people\.crew: 'lines' is no crew of the plan.*did you mean 'line'/],
    [people("Monday", { to: 1 }), /people\.to: 1, but it has 2 on Monday; allowed: 2 or more/],
    [people("Monday", { from: 3 }), /people\.from: 3, but it has 2 on Monday/],
    [people("Monday", { from: 2, to: 2 }), /nothing|no day but/],
    [people("Monday", { positions: ["hangin"] }), /'hangin' is no place of work/],
    [{ day: { ...lastLorry.day, days: ["Friday"] } }, /day\.days\[0\]: 'Friday' is no working day/],
    [{ day: { ...lastLorry.day, days: ["Monday"] } }, /day\.days: no day but Monday itself/],
    [{ day: { ...lastLorry.day, days: ["Tuesday"], lorries: 4 } }, /day\.lorries: 4 of 3 lorries; allowed: 3 or fewer/],
    [
      { day: { ...lastLorry.day, days: ["Tuesday"], load: "fram" } },
      /'fram' is no load on Monday.*did you mean 'farm'/,
    ],
    [{ load: { name: "fram", on: "Monday", from: "05:00", to: "06:00" } }, /'fram' is no load on Monday/],
    [{ gap: { load: "farm", on: "Tuesday", from: "2 min", to: "3 min" } }, /gap\.from: 2 min, but today it is 1 min/],
  ])("%j", (element, fault) => {
    const faults = readImprove(question(plan, { among: [element] }), NO_FILES).faults.map(formatFault);
    expect(faults.join("\n")).toMatch(fault);
  });

  it("a plan of one day, what stands twice, people that are more than are at hand, orders that are none", () => {
    const { week: _, ...day } = plan;
    const faults = (json: Json) => readImprove(json, NO_FILES).faults.map(formatFault).join("\n");
    expect(faults(question(day, { among: [people("Monday")] }))).toMatch(
      /allocate\.week: the plan is of one day alone/,
    );
    expect(faults(question(plan, { among: [people("Monday"), people("Monday")] }))).toMatch(
      /among\[1\]: people of line on Monday stands twice/,
    );
    expect(faults(question(plan, { mostPeople: 1, among: [people("Monday"), people("Tuesday")] }))).toMatch(
      /mostPeople: 1, fewer than the entries have at least; allowed: 2 or more/,
    );
    expect(
      faults(
        question(plan, {
          mostPeople: 1,
          among: [lastLorry].map(({ day: lorry }) => ({ day: { ...lorry, days: ["Tuesday"] } })),
        }),
      ),
    ).toMatch(/mostPeople: 1, but no people are to be moved/);
    expect(faults(question(plan, { among: [people("Monday")] }, { orders: "5 %" }))).toMatch(
      /orders: the plan has no orders/,
    );
  });

  it("hours of the usual day where every day has its own, and takes them where one has not", () => {
    const times = { among: [{ load: { name: "farm", from: "05:15", to: "06:00" } }] };
    const asked = (days: Json[]) => ({ ...question(planOf(days), {}), allocate: { times } });
    const faults = readImprove(asked([dayOf("Monday", 3)]), NO_FILES).faults.map(formatFault);
    expect(faults.join()).toMatch(/every day of the week has loads of its own.*"allocate": \{ "week"/);
    expect(readImprove(asked([dayOf("Monday", 3), { name: "Tuesday" }]), NO_FILES).faults).toEqual([]);
  });
});
