import { describe, expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { cleaningSeconds } from "../../../../sim/day/observations/workingTime.ts";
import { constant, crew, planOf, station, stream } from "../../../support/plans.ts";
import { runChecked } from "../../../support/timeline.ts";

// Heads at 10, ..., 60; killed in 2 s, the last at 62; packed in 20 s each, the last at 132.
function plan(people: number, killSeconds: number) {
  const line = [station("kill", 2, { section: "hot" }), station("packing", 20, { section: "cold", buffer: 9 })];
  const base = planOf(stream(constant(10), 6), line, { crews: [crew("cleaners", people)] });
  const sections = [
    { section: "cold", seconds: 40, people: 2 },
    { section: "hot", seconds: killSeconds, people: 1 },
  ];
  const cleaning = { seconds: 0, crews: ["cleaners"], sections };
  const shifts = [{ name: "day", fromSeconds: 0, toSeconds: 150 }];
  return { ...base, day: { ...base.day, cleaning, shifts } };
}
const cleaned = (people: number, killSeconds: number) =>
  runChecked(plan(people, killSeconds)).cleaning!.map((each) => [each.section, each.fromSeconds, each.toSeconds]);

describe("sections that are cleaned one by one", () => {
  it("are so from when nothing comes there any more", () => {
    expect(cleaned(3, 30)).toEqual([
      ["hot", 62, 92],
      ["cold", 132, 172],
    ]);
  });

  it("wait for people who are at another section, and take longer with fewer than they need", () => {
    // One of two is at the hot section until 162.
    expect(cleaned(2, 100)[1]).toEqual(["cold", 162, 202]);
    // One person alone: 80 s for the work of two in 40.
    expect(cleaned(1, 30)[1]).toEqual(["cold", 132, 212]);
    expect(cleaned(0, 30)).toEqual([]);
  });

  it("count as overtime and as time in which something is cleaned, each second once", () => {
    const day = runChecked(plan(2, 100));
    const found = measure(day, plan(2, 100));
    expect(found).toMatchObject({ cleaningEnd: 202, "cleaningEnd.hot": 162, "cleaningEnd.cold": 202, overtime: 52 });
    expect(cleaningSeconds(day, plan(2, 100))).toBe(140);
    expect(cleaningSeconds(runChecked(plan(3, 30)), plan(3, 30))).toBe(70);
  });
});
