import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import { runStudy } from "../../../sim/days/run/index.ts";
import { weekStudy } from "../../../sim/questions/week/index.ts";
import { renderReport } from "../../../viz/index.ts";
import { exampleWeek, weekPlan } from "../../support/exampleWeek.ts";

const RESULTS = await exampleWeek();
const WEEK = RESULTS.variants[0]!.day.week!;
const PAGE = pageOf(RESULTS);

function pageOf(results: StudyResults): Document {
  return parseHTML(renderReport(results)).document;
}

function rowsOf(table: Element): string[][] {
  return [...table.querySelectorAll("tbody tr")].map((row) =>
    [...row.querySelectorAll("th, td")].map((cell) => cell.textContent!),
  );
}

function tableCalled(page: Document, caption: RegExp): Element {
  return [...page.querySelectorAll("table")].find((table) =>
    caption.test(table.querySelector("caption")?.textContent ?? ""),
  )!;
}

test("the first pages have the answer, the board, the days, the orders, what to do next and the cautions, in this order", () => {
  const first = PAGE.querySelector("section.first")!;
  const found = [
    ...first.querySelectorAll(
      ".question, .verdict, .answer, figure, .decision, .cards:not(.decision), .next, #cautions",
    ),
  ];
  expect(found.map(({ tagName, className, id }) => id || className || tagName)).toEqual([
    ...["question", "verdict", "answer", "FIGURE", "decision cards", "cards", "next", "cautions"],
  ]);
  expect(first.querySelectorAll("figure")).toHaveLength(1);
  expect(first.querySelector("figure title")!.textContent).toBe("The week, hour by hour");
});

test("a row for each day that counts, and one for the week", () => {
  const rows = rowsOf(PAGE.querySelector("table.decision")!);
  expect(rows.map(([name]) => name)).toEqual(["Monday", "Tuesday", "Thursday", "the week"]);
});

test("an order says in how many weeks it was ready, and when it was filled in the week of the picture", () => {
  const orders = rowsOf(tableCalled(PAGE, /^Orders/));
  const { values } = RESULTS.variants[0]!;
  const ready = values["order.hotel.late"]!.filter((value) => value === 0).length;
  expect(orders.map(([name, due, wanted]) => [name, due, wanted])).toEqual([
    ["rush", "Tuesday 10:00", expect.stringMatching(/^9.000 carcasses$/)],
    ["hotel", "Thursday 11:00", "500 carcasses"],
  ]);
  expect(orders[1]![3]).toBe(`${ready} of 2 weeks`);
  expect(orders[0]!.slice(3)).toEqual(["0 of 2 weeks", "not filled"]);
});

test("each lot has a row from its lorry to its last head, with the number of the board", () => {
  const rows = rowsOf(tableCalled(PAGE, /^From the lorry/));
  expect(rows).toHaveLength(WEEK.lots.length);
  rows.forEach((row, index) => {
    const lot = WEEK.lots[index]!;
    expect(row.slice(0, 2)).toEqual([String(index + 1), lot.name]);
    expect(row[6]).toBe(`${lot.hung} of ${lot.heads}`);
    expect(row[7]).toContain(`${lot.out.carcass} carcass`);
    expect(row[4]).toMatch(
      lot.firstHungSeconds === null ? /^\u2013$/ : /^[A-Z][a-z]+day \d\d:\d\d to ([A-Z][a-z]+day )?\d\d:\d\d$/,
    );
  });
});

test("from a day back to its lots: those hung on it, and those that could be among its carcasses", () => {
  const rows = rowsOf(tableCalled(PAGE, /^From a day back/));
  expect(rows.map(([name, out]) => [name, Number(out!.replace(/\D/g, ""))])).toEqual(
    ["Monday", "Tuesday", "Thursday"].map((name, index) => [name, WEEK.days[index]!.heads.out.carcass]),
  );
  const lots = (row: string[], column: number) => row[column]!.split(", ").map(Number);
  // The lot that waits over the night was hung on both days.
  expect(lots(rows[1]!, 2)[0]).toBe(lots(rows[0]!, 2).at(-1));
  for (const row of rows) expect(lots(row, 3)).toEqual(expect.arrayContaining(lots(row, 2)));
});

const OF_DAYS = /.{0,40}(simulated days\b|\b\d+ days each|on the same days|one simulated day(?!,)|\bday 1\b).{0,20}/i;

test("the report speaks of weeks, and says of which day the pictures of a day are", () => {
  // What is read off pictures is no text.
  for (const data of PAGE.querySelectorAll("script")) data.remove();
  const text = PAGE.querySelector("main")!.textContent!;
  expect(text.match(OF_DAYS)).toBeNull();
  expect(text).toContain("Means over 2 simulated weeks");
  expect(text).toContain("Monday of week 1");
  expect(text).toContain("A week is a chain of such days");
});

test("plans of a week that are compared keep the table to decide by, in weeks, and have the board behind it", async () => {
  const [plan, ill] = [weekPlan(), weekPlan({ orders: [] })];
  const study = weekStudy(plan, "1", 2);
  const other = { ...study.variants[0]!, name: "no orders", plan: ill };
  const variants = [study.variants[0]!, other];
  const responses = ["finish", "overtime", "week.carcasses"];
  const compared = await runStudy({ ...study, kind: "what if", responses, variants }, { gambrel: "1", command: "x" });
  const page = pageOf(compared);
  const first = page.querySelector("section.first")!;
  expect(
    rowsOf(first.querySelector("table.decision")!).map(([name]) => name!.replace(/ ?(best|\(today.*)$/, "").trim()),
  ).toEqual(["the week", "no orders"]);
  expect(first.textContent).toMatch(/on the same weeks/);
  for (const data of page.querySelectorAll("script")) data.remove();
  expect(page.querySelector("main")!.textContent!.match(OF_DAYS)).toBeNull();
  expect([...page.querySelectorAll("#day-0 figure title")][0]!.textContent).toBe("The week, hour by hour");
});
