import { expect, test } from "vitest";
import { weekBoardViews } from "../../../viz/pictures/index.ts";
import { BOARD_STEP_SECONDS } from "../../../viz/pictures/weekBoardColumns.ts";
import { meanBetween } from "../../../viz/pictures/weekBoardView.ts";
import { exampleWeek } from "../../support/exampleWeek.ts";

const RESULTS = await exampleWeek();
const BASE = RESULTS.variants[0]!;
const WEEK = BASE.day.week!;
const [VIEW] = weekBoardViews(RESULTS, BASE);

test("every day of the calendar stands on the board with its date, the one without work as closed", () => {
  expect(VIEW!.days.map(({ name, date, works }) => [name, date, works])).toEqual([
    ["Monday", "17 March", true],
    ["Tuesday", "18 March", true],
    ["Wednesday", "19 March", false],
    ["Thursday", "20 March", true],
  ]);
});

test("half hours of each crew add up to its record of the day", () => {
  const worked = VIEW!.days.filter(({ works }) => works);
  worked.forEach((day, index) => {
    day.crews.forEach((crew, place) => {
      const { busySeconds, presentSeconds } = WEEK.days[index]!.crews[place]!;
      const seconds = (values: readonly number[]) => values.reduce((sum, value) => sum + value * BOARD_STEP_SECONDS, 0);
      // A week keeps its traces to a millionth of a person: 0.05 s in a day.
      expect(seconds(crew.busy)).toBeCloseTo(busySeconds, 1);
      expect(seconds(crew.present)).toBeCloseTo(presentSeconds, 1);
    });
  });
});

test("who is ill is missing on that day alone", () => {
  const place = VIEW!.crews.findIndex(({ name }) => name.includes("evisceration"));
  expect(VIEW!.crews[place]!.largest).toBe(4);
  expect(VIEW!.days.map((day) => day.crews[place]?.people)).toEqual([4, 3, undefined, 4]);
});

test("a lot that waits over the night stands on both days, within the work of each", () => {
  const kept = WEEK.lots.findIndex(
    ({ firstHungSeconds: first, lastHungSeconds: last }) => first! < 86_400 && last! > 86_400,
  );
  expect(kept).toBeGreaterThanOrEqual(0);
  const days = VIEW!.days.filter(({ lots }) => lots.some(({ number }) => number === kept + 1));
  expect(days.map(({ name }) => name)).toEqual(["Monday", "Tuesday"]);
  for (const { lots, workEnd } of VIEW!.days)
    for (const { from, to } of lots) {
      expect(from).toBeLessThanOrEqual(to);
      expect(to).toBeLessThanOrEqual(workEnd!);
    }
});

test("lots that were not hung on a day do not stand on it", () => {
  const numbers = VIEW!.days.flatMap(({ lots }) => lots.map(({ number }) => number));
  const hung = WEEK.lots.flatMap(({ hung }, index) => (hung > 0 ? [index + 1] : []));
  expect([...new Set(numbers)]).toEqual(hung);
});

test("work after the last shift is overtime, told and counted; orders by the time that they are due", () => {
  const tuesday = WEEK.days[1]!;
  expect(tuesday.workFinishSeconds).toBeGreaterThan(tuesday.shiftEndSeconds);
  expect(VIEW!.days.map(({ notes }) => notes.some((note) => note.startsWith("overtime")))).toEqual([
    false,
    true,
    false,
    false,
  ]);
  expect(VIEW!.orders).toEqual([
    { day: 1, at: 10 * 3600, met: false, name: "rush", state: expect.stringMatching(/carcasses missing$/) },
    { day: 3, at: 11 * 3600, met: WEEK.orders[1]!.short === 0, name: "hotel", state: expect.any(String) },
  ]);
  expect(VIEW!.description).toMatch(/^Work ends: Monday \d\d:\d\d, Tuesday \d\d:\d\d \(.* of overtime\), Thursday/);
});

test("the chiller's filling goes from what stayed to what stays", () => {
  const [fill] = VIEW!.fills;
  expect(fill!.name).toBe("chilling");
  WEEK.days.forEach(({ heads }, index) => {
    const { values } = fill!.days[index]!;
    expect(Math.max(...values)).toBeLessThanOrEqual(fill!.largest);
    if (heads.onLine === 0) expect(values.at(-1)).toBe(0);
    else expect(values.at(-1)).toBeGreaterThan(0);
  });
});

test("seven days fit a board, and days of the warm-up are on none", () => {
  const { days } = RESULTS.plan.week!;
  const closed = Array.from({ length: 8 }, (_, index) => ({ ...days[2]!, name: `closed ${index}` }));
  const long = { ...RESULTS, plan: { ...RESULTS.plan, week: { ...RESULTS.plan.week!, days: [...days, ...closed] } } };
  expect(weekBoardViews(long, BASE).map((board) => board.days.length)).toEqual([7, 5]);
  const warm = days.map((day, index) => ({ ...day, counted: day.counted && index > 0 }));
  const warmed = { ...RESULTS, plan: { ...RESULTS.plan, week: { ...RESULTS.plan.week!, days: warm } } };
  expect(weekBoardViews(warmed, BASE)[0]!.days.map(({ name }) => name)).toEqual(["Tuesday", "Wednesday", "Thursday"]);
});

test("a plan of one day has no board; a week without traces says what is missing", () => {
  const { week: _, ...plan } = RESULTS.plan;
  expect(weekBoardViews({ ...RESULTS, plan }, BASE)).toEqual([]);
  const days = WEEK.days.map((day) => ({ ...day, traces: null }));
  const bare = { ...BASE, day: { ...BASE.day, week: { ...WEEK, days } } };
  expect(weekBoardViews(RESULTS, bare)[0]!.footnote).toContain("without traces");
});

test("the mean of a trace is weighted by time, in steps and in bins, 0 after its end", () => {
  const exact = { kind: "exact" as const, name: "", endSeconds: 100, times: [0, 10, 40], values: [2, 4, 0] };
  expect(meanBetween(exact, 0, 20)).toBe(3);
  expect(meanBetween(exact, 30, 60)).toBeCloseTo(40 / 30, 12);
  const binned = {
    kind: "binned" as const,
    name: "",
    endSeconds: 25,
    binSeconds: 10,
    low: [0, 0, 0],
    high: [9, 9, 9],
    mean: [1, 2, 3],
  };
  expect(meanBetween(binned, 5, 25)).toBe((5 + 20 + 15) / 20);
  expect(meanBetween(binned, 20, 40)).toBe(15 / 20);
});
