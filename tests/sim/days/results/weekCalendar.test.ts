import { afterEach, expect, test } from "vitest";
import { weekCalendar } from "../../../../sim/days/results/index.ts";
import { exampleDay } from "../../../support/exampleDay.ts";
import { exampleWeek } from "../../../support/exampleWeek.ts";

/** Long and with every sign that has a meaning in a calendar file. */
const NAME =
  "Hotel; far, \u00FC\u00F6\u00E4\u00FC\u00F6\u00E4\u00FC\u00F6\u00E4 \u00FC\u00F6\u00E4\u00FC\u00F6\u00E4 by far \\ the last";
const ORDERS = [
  { name: NAME, day: "Thursday", by: "11:00", carcasses: 500 },
  { name: "rush", day: "Tuesday", by: "10:00", kilograms: "900 kg" },
];
const RESULTS = await exampleWeek({ orders: ORDERS }, 1);
const TEXT = (await weekCalendar(RESULTS))!;

interface Component {
  [property: string]: string;
}

/** RFC 5545, 3.1: lines end with CRLF, and one that begins with a space goes on the one before. */
function unfolded(text: string): string[] {
  return text
    .replace(/\r\n[ \t]/g, "")
    .split("\r\n")
    .filter((line) => line !== "");
}

function eventsOf(text: string): Component[] {
  const events: Component[] = [];
  for (const line of unfolded(text)) {
    if (line === "BEGIN:VEVENT") events.push({});
    const [, name, value] = /^([A-Z-]+(?:;[^:]*)?):(.*)$/.exec(line)!;
    if (events.length > 0 && name !== "BEGIN" && name !== "END") events.at(-1)![name!] = value!;
  }
  return events;
}

const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

// Rules of RFC 5545, Internet Calendaring and Scheduling Core Object Specification (2009), by section.

test("lines end with CRLF and are folded to 75 octets (3.1)", () => {
  expect(TEXT.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  for (const line of TEXT.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  expect(TEXT.split("\r\n").some((line) => line.startsWith(" "))).toBe(true);
});

test("the calendar has version, maker and whole components (3.4, 3.6, 3.7)", () => {
  const lines = unfolded(TEXT);
  expect([lines[0], lines.at(-1)]).toEqual(["BEGIN:VCALENDAR", "END:VCALENDAR"]);
  expect(lines.filter((line) => line === "VERSION:2.0")).toHaveLength(1);
  expect(lines.filter((line) => line.startsWith("PRODID:"))).toHaveLength(1);
  expect(lines.filter((line) => line === "BEGIN:VEVENT")).toHaveLength(eventsOf(TEXT).length);
  expect(lines.filter((line) => line === "END:VEVENT")).toHaveLength(eventsOf(TEXT).length);
});

test("every event has a stamp in UTC and a name of its own (3.6.1, 3.8.4.7, 3.8.7.2)", () => {
  const events = eventsOf(TEXT);
  for (const { DTSTAMP } of events) expect(DTSTAMP).toMatch(/^\d{8}T\d{6}Z$/);
  expect(new Set(events.map(({ UID }) => UID)).size).toBe(events.length);
});

test("times are floating: without zone and without the Z of UTC, and an end comes after its start (3.3.5, 3.8.2)", () => {
  for (const event of eventsOf(TEXT)) {
    expect(event.DTSTART).toMatch(/^\d{8}T\d{6}$/);
    if (event.DTEND !== undefined) expect(event.DTEND > event.DTSTART!).toBe(true);
  }
});

test("text has backslash, comma and semicolon escaped (3.3.11)", () => {
  const escaped = NAME.replace(/[\\;,]/g, (sign) => `\\${sign}`);
  expect(eventsOf(TEXT).map(({ SUMMARY }) => SUMMARY)).toContain(`Order due: ${escaped}\\, 500 carcasses`);
});

test("the calendar's name is escaped too (RFC 7986, 5.1)", async () => {
  const named = { ...RESULTS, plan: { ...RESULTS.plan, name: "One, two; three" } };
  expect(unfolded((await weekCalendar(named))!)).toContain("NAME:One\\, two\\; three");
});

test("shifts, lorries and orders stand where the plan has them", () => {
  const starts = (summary: string) =>
    eventsOf(TEXT)
      .filter(({ SUMMARY }) => SUMMARY!.startsWith(summary))
      .map(({ DTSTART, DTEND }) => [DTSTART, DTEND]);
  expect(starts("Shift: day")).toEqual([
    ["20310317T060000", "20310317T143000"],
    ["20310318T060000", "20310318T073000"],
    ["20310320T060000", "20310320T143000"],
  ]);
  expect(starts("Order due: rush")).toEqual([["20310318T100000", undefined]]);
  const { lots } = RESULTS.variants[0]!.day.week!;
  const lorries = starts("Lorry due: load 1");
  expect(lorries).toHaveLength(lots.filter(({ name }) => name === "load 1").length);
  // Experiments/plans/ferncote.json: the first lorry is due at 05:20 on each day.
  expect(lorries.map(([start]) => start)).toEqual(["20310317T052000", "20310318T052000", "20310320T052000"]);
});

test("a shift has the people that it has by plan that day, one fewer where somebody is ill", () => {
  const people = eventsOf(TEXT).flatMap(({ SUMMARY }) => /^Shift: day\\, (\d+) people$/.exec(SUMMARY!)?.[1] ?? []);
  expect(people.map(Number)).toEqual([22, 21, 22]);
});

test("it is the same whatever the zone of the machine, also where clocks are put forward that night", async () => {
  const spring = { ...RESULTS, plan: { ...RESULTS.plan, week: { ...RESULTS.plan.week!, begins: "2031-03-29" } } };
  process.env.TZ = "UTC";
  const there = await weekCalendar(spring);
  process.env.TZ = "Europe/Paris";
  expect(new Date("2031-03-30T12:00:00").getTimezoneOffset()).toBe(-120);
  expect(await weekCalendar(spring)).toBe(there);
});

test("days of the warm-up have no events", async () => {
  const { week } = RESULTS.plan;
  const days = week!.days.map((day, index) => ({ ...day, counted: day.counted && index > 0 }));
  const warm = { ...RESULTS, plan: { ...RESULTS.plan, week: { ...week!, days } } };
  for (const { DTSTART } of eventsOf((await weekCalendar(warm))!)) expect(DTSTART! >= "20310318").toBe(true);
});

test("without a date, or without a week, there is no calendar", async () => {
  const undated = { ...RESULTS, plan: { ...RESULTS.plan, week: { ...RESULTS.plan.week!, begins: null } } };
  expect(await weekCalendar(undated)).toBeNull();
  expect(await weekCalendar(exampleDay("parts/crews", "none"))).toBeNull();
});
