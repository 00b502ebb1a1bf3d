import { expect, test } from "vitest";
import { weekBoardChart, weekBoardTable } from "../../../viz/pictures/index.ts";
import type { BoardDay, WeekBoardColumns } from "../../../viz/pictures/weekBoardColumns.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const HOUR = 3600;
const CREW = { startClockSeconds: 6 * HOUR, busyShare: 0.8 };
const CLOSED = { works: false, notes: ["closed"], shiftEnd: null, workEnd: null, pauses: [], crews: [], lots: [] };

const DAYS: BoardDay[] = [
  {
    name: "Monday",
    date: "17 March",
    works: true,
    notes: ["work ends 10:30", "overtime 30 min"],
    shiftEnd: 10 * HOUR,
    workEnd: 10.5 * HOUR,
    pauses: [{ from: 8 * HOUR, to: 8.5 * HOUR }],
    crews: [
      { ...CREW, people: 3, busy: [2, 2.5, 3, 3, 0, 3, 3, 2, 1], present: [3, 3, 3, 3, 0, 3, 3, 3, 3] },
      { ...CREW, people: 1, busy: [0, 0, 0.5, 0, 0, 0, 1, 0, 0], present: [1, 1, 1, 1, 1, 1, 1, 1, 1] },
    ],
    lots: [
      { number: 1, from: 6.5 * HOUR, to: 8 * HOUR, words: "lot 1" },
      { number: 2, from: 8 * HOUR, to: 9.5 * HOUR, words: "lot 2" },
    ],
  },
  { name: "Tuesday", date: "18 March", ...CLOSED },
  {
    name: "Wednesday",
    date: "19 March",
    works: true,
    notes: ["work ends 09:00"],
    shiftEnd: 10 * HOUR,
    workEnd: 9 * HOUR,
    pauses: [],
    crews: [
      { ...CREW, people: 2, busy: [2, 2, 2, 2, 2, 1], present: [2, 2, 2, 2, 2, 2] },
      { ...CREW, people: 1, busy: [0, 0, 0, 0, 0, 0], present: [1, 1, 1, 1, 1, 1] },
    ],
    lots: [{ number: 3, from: 6 * HOUR, to: 8 * HOUR, words: "lot 3" }],
  },
];

const COLUMNS: WeekBoardColumns = {
  title: "The week, hour by hour",
  caption: "White under a line is people who wait",
  subtitle: "One week",
  description: "Work ends.",
  fromSeconds: 6 * HOUR,
  toSeconds: 12 * HOUR,
  days: DAYS,
  crews: [
    { name: "evisceration", largest: 3 },
    { name: "maintenance", largest: 1 },
  ],
  fills: [
    {
      name: "chiller",
      largest: 400,
      places: 500,
      days: [
        { times: [6 * HOUR, 8 * HOUR, 11 * HOUR], values: [0, 400, 150] },
        { times: [6 * HOUR, 9 * HOUR, 11 * HOUR], values: [150, 300, 0] },
      ],
    },
  ],
  orders: [
    { day: 0, at: 9 * HOUR, met: true, name: "hotel", state: "in time" },
    { day: 1, at: 9 * HOUR, met: false, name: "rush", state: "120 carcasses missing" },
    { day: 2, at: 11 * HOUR, met: false, name: "market", state: "40 kg missing" },
  ],
  footnote: "",
};

function paths(svg: SVGSVGElement, words: string): string[] {
  const group = [...svg.querySelectorAll("[data-value]")].find((each) =>
    each.getAttribute("data-value")!.startsWith(words),
  )!;
  return [...group.querySelectorAll("path")].map((path) => path.getAttribute("d")!);
}

test("days stand across, crews down, with lots, orders and the chiller below", async () => {
  await expect(picture(weekBoardChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/weekBoard.svg");
});

test("work after the last shift is drawn apart, from the end of the shift on", () => {
  const monday = paths(weekBoardChart(COLUMNS, testContext()), "evisceration, Monday");
  // At work in the shift, at work after it, on duty, floor.
  expect(monday).toHaveLength(4);
  const end = (path: string) => Math.max(...[...path.matchAll(/[MH](-?[\d.]+)/g)].map(([, x]) => Number(x)));
  const start = (path: string) => Number(/^M([\d.]+)/.exec(path)![1]);
  expect(start(monday[1]!)).toBeCloseTo(end(monday[0]!), 0);
  expect(paths(weekBoardChart(COLUMNS, testContext()), "evisceration, Wednesday")).toHaveLength(3);
});

test("fewer people than on other days are told beside the row", () => {
  const texts = textsOf(weekBoardChart(COLUMNS, testContext()));
  expect(texts.filter((text) => / of \d/.test(text))).toEqual(["2 of 3"]);
});

test("a day without work is a narrow column that says so", () => {
  const svg = weekBoardChart(COLUMNS, testContext());
  const upright = svg.querySelector("[transform*=rotate] text")!;
  expect(upright.textContent).toBe("Tuesday: closed");
  const crews = Array.from({ length: 6 }, (_, index) => ({ name: `crew ${index}`, largest: 3 }));
  const tall = weekBoardChart({ ...COLUMNS, crews, days: DAYS.map((day) => ({ ...day, crews: [] })) }, testContext());
  expect(tall.querySelector("[transform*=rotate] text")!.textContent).toBe("Tuesday, 18 March: closed");
});

test("an order that is not ready has an open mark, one in time a filled one", () => {
  const svg = weekBoardChart(COLUMNS, testContext());
  const fill = (name: string) =>
    [...svg.querySelectorAll("[data-value^=order]")]
      .find((each) => each.getAttribute("data-value")!.includes(name))!
      .querySelector("path")!
      .getAttribute("fill");
  expect(fill("rush")).toBe(fill("market"));
  expect(fill("rush")).not.toBe(fill("hotel"));
  expect(textsOf(svg)).toContain("09:00 rush: 120 carcasses missing");
});

test("in a narrow picture the days stand below each other, each with all of its rows", () => {
  const svg = weekBoardChart(COLUMNS, testContext({ width: 336 }));
  const tops = ["Monday, 17 March", "Tuesday, 18 March", "Wednesday, 19 March"].map((name) =>
    Number([...svg.querySelectorAll("text")].find(({ textContent }) => textContent === name)!.getAttribute("y")),
  );
  expect(tops).toEqual([...tops].sort((a, b) => a - b));
  const texts = textsOf(svg);
  expect(texts.filter((text) => text === "evisceration")).toHaveLength(2);
  expect(texts.join(" ")).toContain("order due 09:00 rush");
});

test("a board of twelve crews and seven days is no taller than a sheet on its side", () => {
  const crews = Array.from({ length: 12 }, (_, index) => ({ name: `crew ${index}`, largest: 3 }));
  const days = Array.from({ length: 7 }, () => ({ ...DAYS[0]!, crews: crews.map(() => DAYS[0]!.crews[0]!) }));
  const fills = COLUMNS.fills.map((fill) => ({ ...fill, days: days.map(() => fill.days[0]!) }));
  const svg = weekBoardChart({ ...COLUMNS, crews, days, fills }, testContext({ width: 1040 }));
  // ISO 216: the sides of a sheet are as 1 to the root of 2.
  expect(Number(svg.getAttribute("height"))).toBeLessThanOrEqual(1040 / Math.SQRT2);
});

test("the table has a row a half hour of each day of work", () => {
  const { columns, rows } = weekBoardTable(COLUMNS);
  expect(columns.slice(2).map(({ unit }) => unit)).toEqual(["people", "people", "people", "people"]);
  expect(rows).toHaveLength(9 + 6);
  expect(rows[1]).toEqual(["Monday", "06:30", 2.5, 3, 0, 1]);
});

test("a sheet without work says so", () => {
  const days = [DAYS[1]!];
  expect(textsOf(weekBoardChart({ ...COLUMNS, days }, testContext()))[1]).toMatch(/^No day/);
});
