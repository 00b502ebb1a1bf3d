import { beforeAll, describe, expect, it } from "vitest";
import { NO_FILES, readPlan } from "../../../../sim/asked/plan/index.ts";
import { type NarrowedUncertain, narrowUncertain, readObserved } from "../../../../sim/questions/calibrate/index.ts";
import { formatClock } from "../../../../sim/text/units/index.ts";

/** Cutting sets the pace: 300 heads of 10 s; hanging is far faster. Invented. */
const plan = (cutting: number) => ({
  name: "Two stations",
  uncertain: [
    { name: "cutting", paths: ["line.cutting.cycle"], guess: "a third" },
    { name: "hanging", paths: ["line.hanging.cycle"], guess: "a tenth" },
  ],
  day: { shifts: [{ name: "day", from: "06:00", to: "14:00" }] },
  supply: { stream: { interarrival: "1 s", heads: 300 } },
  line: [
    { name: "hanging", kind: "station", buffer: 300, cycle: "2 s" },
    { name: "cutting", kind: "station", buffer: 5, cycle: { gamma: { mean: `${cutting} s`, cv: 0.3 } } },
  ],
});
const OPTIONS = {
  seed: "narrow",
  countedAt: "cutting",
  mostEvents: 1e6,
  beforeDay: async () => {},
  worlds: 40,
  progress: () => {},
};

let found: NarrowedUncertain;

beforeAll(async () => {
  const { plan: read } = readPlan(plan(10), NO_FILES);
  // Days that ended as 300 heads of 11.5 s do, a minute or two apart: cutting takes 1.15 times what the plan says.
  const ends = [-100, -40, 0, 40, 100].map((off) => formatClock(6 * 3600 + 300 * 11.5 + off));
  const { observed } = readObserved(
    `day,finish\n${ends.map((end, day) => `day ${day + 1},${end}`).join("\n")}\n`,
    read!,
  );
  found = (await narrowUncertain(read!, { json: plan(10), files: NO_FILES }, observed!, OPTIONS))!;
});

describe("narrowUncertain", () => {
  it("narrows what the observed days tell, about the truth, and leaves what they do not", () => {
    const [cutting, hanging] = found.figures;
    // A day's mean cycle is told to 0.3 / sqrt(300) = 1.7 %, of five days 0.8 %; the guess had an sd of 19 %.
    expect(cutting).toMatchObject({ name: "cutting", narrowed: true });
    expect(cutting!.low).toBeGreaterThan(1.05);
    expect(cutting!.low).toBeLessThan(1.15);
    expect(cutting!.high).toBeGreaterThan(1.15);
    expect(cutting!.high).toBeLessThan(1.25);
    expect(cutting!.left).toBeLessThan(0.4);
    expect(hanging).toMatchObject({ name: "hanging", narrowed: false });
  });

  it("writes entries that a plan takes: the narrowed one as draws, still a guess, the other as it was", () => {
    const { plan: read, faults } = readPlan({ ...plan(10), uncertain: found.uncertain }, NO_FILES);
    expect(faults).toEqual([]);
    const [cutting, hanging] = read!.uncertain!;
    expect(cutting).toMatchObject({ name: "cutting", kind: "guess", factor: { family: "draws" } });
    expect(cutting!.note).toBe("Narrowed by 5 observed days; before: cutting (guess)");
    expect(hanging).toMatchObject({ name: "hanging", factor: { family: "uniform", min: 0.9, max: 1.1 } });
  });
});
