import { expect, test } from "vitest";
import { chartFrame } from "../../../viz/frame/index.ts";
import { drawKey } from "../../../viz/marks/index.ts";
import { testContext, textsOf } from "../../support/drawing.ts";

const WORDS = { title: "t", caption: "", subtitle: "", description: "" };

test("a key takes one line where it fits and more where it does not", () => {
  const items = ["working", "blocked", "starved"].map((name) => ({ name, fill: "#888" }));
  const wide = chartFrame(WORDS, testContext());
  const narrow = chartFrame(WORDS, testContext({ width: 180 }));
  expect(drawKey(wide, items, 50)).toBe(63);
  expect(drawKey(narrow, items, 50)).toBe(103);
  expect(textsOf(wide.finish(100)).slice(1)).toEqual(["working", "blocked", "starved"]);
});
