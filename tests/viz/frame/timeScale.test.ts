import { expect, test } from "vitest";
import { chartFrame, timeScale } from "../../../viz/frame/index.ts";
import { testContext } from "../../support/drawing.ts";

test("the picture's root tells where its time axis lies, for a cursor through several pictures", () => {
  const frame = chartFrame({ title: "t", caption: "", subtitle: "", description: "" }, testContext());
  const scale = timeScale(frame, 7200, 100, 700);
  expect([scale(0), scale(3600), scale(7200)]).toEqual([100, 400, 700]);
  const root = frame.finish(50);
  expect(["left", "right", "end"].map((end) => root.getAttribute(`data-time-${end}`))).toEqual(["100", "700", "7200"]);
});
