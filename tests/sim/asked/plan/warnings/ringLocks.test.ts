import { describe, expect, it } from "vitest";
import { stageOf, wholeWarnings } from "../wholeMessages.ts";

const WHY =
  "and every stage on the way round has limited places: all of them can be full and wait for each other for ever";

describe("a ring of stages that can lock", () => {
  it("is told at the off-line stage with few places", () => {
    expect(wholeWarnings((plan) => (stageOf(plan, "trim").buffer = 5))).toEqual([
      `line[8].buffer: heads sent to 'trim' can come back to it, ${WHY}; "buffer": null prevents it`,
    ]);
  });

  it("is told at a stage of the line that heads are sent back to", () => {
    const back = (plan: Parameters<typeof stageOf>[0]) =>
      stageOf(plan, "inspection").diversions.push({ to: "evisceration", share: "1 %" });
    expect(wholeWarnings(back)).toEqual([
      `line[6].buffer: heads sent to 'evisceration' can come back to it, ${WHY}; "buffer": null prevents it`,
    ]);
  });

  it("is told at a dwell by its places, and at a chain by the stations round it", () => {
    const dwell = { name: "trim", kind: "dwell", offLine: true, places: 4, dwell: "1 s", next: "inspection" };
    const chain = {
      ...dwell,
      kind: "chain",
      length: "3 m",
      pitch: "1 m",
      speed: "1 m/s",
      places: undefined,
      dwell: undefined,
    };
    expect(wholeWarnings((plan) => (plan.line[8] = dwell))).toEqual([
      `line[8].places: heads sent to 'trim' can come back to it, ${WHY}; "places": null prevents it`,
    ]);
    expect(wholeWarnings((plan) => (plan.line[8] = JSON.parse(JSON.stringify(chain))))).toEqual([
      `line[8]: heads sent to 'trim' can come back to it, ${WHY}; give a station of the ring "buffer": null`,
    ]);
  });

  it("cannot lock when one stage of it takes any number of heads", () => {
    const free = wholeWarnings((plan) => {
      stageOf(plan, "trim").buffer = 5;
      stageOf(plan, "inspection").buffer = null;
    });
    expect(free).toEqual([]);
  });

  it("is none where heads go on down the line", () => {
    expect(wholeWarnings((plan) => Object.assign(stageOf(plan, "trim"), { buffer: 5, next: "chilling" }))).toEqual([]);
  });
});
