import { scaleLinear } from "d3";
import { expect, test } from "vitest";
import { dayFrame } from "../../../viz/frame/index.ts";
import { drawTrace, type TraceColumns } from "../../../viz/marks/index.ts";
import { testContext } from "../../support/drawing.ts";

const scale = scaleLinear().domain([0, 10]).range([0, 100]);

function paths(trace: TraceColumns): string[] {
  const words = { title: "t", caption: "", subtitle: "", description: "" };
  const day = { ...words, startClockSeconds: 0, endSeconds: 10, pauses: [] };
  const gutters = { left: -12, right: 12 };
  const frame = dayFrame(day, testContext({ width: 124 }), gutters, gutters);
  drawTrace(frame, frame.body, trace, scale);
  return [...frame.finish(50).querySelectorAll("path")].map((path) => path.getAttribute("d")!);
}

test("exact steps are one line", () => {
  expect(paths({ kind: "exact", times: [0, 4], values: [1, 3] })).toEqual(["M0,10H40V30H100"]);
});

test("bins are a band from lowest to highest and a line of means, so that no peak is lost", () => {
  const [band, line] = paths({ kind: "binned", binSeconds: 5, low: [0, 1], high: [2, 9], mean: [1, 2] });
  expect(band).toContain("90");
  expect(line).toBe("M0,10H50V20H100");
});
