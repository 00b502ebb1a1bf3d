import { expect, test } from "vitest";
import { chartFrame, type Texture, textureFill } from "../../../viz/frame/index.ts";
import { testContext } from "../../support/drawing.ts";

test("each texture is a tile of its own and is used by its id", () => {
  const frame = chartFrame({ title: "t", caption: "", subtitle: "", description: "d" }, testContext());
  const names: Texture[] = ["plain", "rising", "falling", "dots", "level", "upright", "cross"];
  const fills = names.map((name) => textureFill(frame.defs, frame.id(name), name, "white", "black"));
  expect(fills[1]).toBe("url(#test-rising)");
  const strokes = [...frame.finish(9).querySelectorAll("pattern")].map(
    (tile) => tile.querySelector("path")?.getAttribute("d") ?? "",
  );
  expect(new Set(strokes).size).toBe(names.length);
});
