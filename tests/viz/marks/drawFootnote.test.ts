import { expect, test } from "vitest";
import { chartFrame } from "../../../viz/frame/index.ts";
import { drawFootnote } from "../../../viz/marks/index.ts";
import { testContext } from "../../support/drawing.ts";

const frame = () => chartFrame({ title: "t", caption: "", subtitle: "", description: "" }, testContext());

test("nothing to say takes no room; each line takes its own", () => {
  expect(drawFootnote(frame(), "", 100)).toBe(100);
  expect(drawFootnote(frame(), "Left out: trim.", 100)).toBe(114);
  expect(drawFootnote(frame(), "a long list of names, ".repeat(12), 100)).toBeGreaterThan(114);
});
