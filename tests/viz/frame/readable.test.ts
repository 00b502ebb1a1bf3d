import { expect, test } from "vitest";
import { chartFrame, readable } from "../../../viz/frame/index.ts";
import { testContext } from "../../support/drawing.ts";

test("a group carries its figures in one line", () => {
  const frame = chartFrame({ title: "t", caption: "", subtitle: "", description: "" }, testContext());
  expect(readable(frame.body, "skinning: 5.1 s\n4.9 to 5.3").attr("data-value")).toBe("skinning: 5.1 s 4.9 to 5.3");
});
