import { expect, test } from "vitest";
import { chartFrame, drawText, readable } from "../../../viz/frame/index.ts";
import { testContext } from "../../support/drawing.ts";

test("a text lands where it is told to, with only the attributes that were asked for", () => {
  const frame = chartFrame({ title: "t", caption: "", subtitle: "", description: "d" }, testContext());
  drawText(frame.body, 10.04, 20.06, "plain");
  drawText(frame.body, 1, 2, "rich", { anchor: "end", size: 14, bold: true, fill: "red", halo: "white" });
  const [, plain, rich] = [...frame.finish(30).querySelectorAll("text")];
  expect([plain!.getAttribute("x"), plain!.getAttribute("y"), plain!.attributes.length]).toEqual(["10", "20.1", 2]);
  expect(rich!.getAttribute("text-anchor")).toBe("end");
  expect(rich!.getAttribute("font-size")).toBe("14");
  expect(rich!.getAttribute("paint-order")).toBe("stroke");
});

test("a group carries its figures in one line", () => {
  const frame = chartFrame({ title: "t", caption: "", subtitle: "", description: "" }, testContext());
  expect(readable(frame.body, "skinning: 5.1 s\n4.9 to 5.3").attr("data-value")).toBe("skinning: 5.1 s 4.9 to 5.3");
});
