import { expect, it } from "vitest";
import { changeAt } from "../../../../sim/asked/study/changeAt.ts";
import { dimension, levelWords } from "../../../../sim/asked/study/dimension.ts";

const ENDS = (range: { at(fraction: number): unknown }) => [range.at(0), range.at(1)];

const PLACES = dimension({ name: "places", path: "line.a.buffer", levels: [4, null] }, ENDS);

const LINKED = dimension(
  {
    name: "pace",
    sets: [
      { path: "line.a.cycle", from: "4 s", to: "6 s" },
      { path: "line.b.cycle", from: "8 s", to: "9 s" },
    ],
  },
  ENDS,
);

const WAY = dimension({ name: "way", options: [{ name: "as it is" }, { name: "short", remove: ["line.c"] }] }, ENDS);

it("dimension names its levels and says what each changes, for one path, linked paths and options", () => {
  expect(PLACES).toMatchObject({ path: "line.a.buffer", levels: ["4", "no limit"] });
  expect(LINKED).toMatchObject({ path: "line.a.cycle + line.b.cycle", levels: ["4 s + 8 s", "6 s + 9 s"] });
  expect(LINKED.changes[1]).toEqual({ set: { "line.a.cycle": "6 s", "line.b.cycle": "9 s" }, insert: [], remove: [] });
  expect(WAY).toEqual({
    ...{ name: "way", path: "", levels: ["as it is", "short"] },
    changes: [
      { set: {}, insert: [], remove: [] },
      { set: {}, insert: [], remove: ["line.c"] },
    ],
  });
});

it("changeAt joins the changes of one level each; -1 leaves the base's value", () => {
  expect(changeAt([PLACES, LINKED, WAY], [1, -1, 1])).toEqual({
    ...{ set: { "line.a.buffer": null }, insert: [], remove: ["line.c"] },
  });
});

it.each([
  [12, "line.skinning.buffer", "12"],
  ["5 s", "line.skinning.cycle", "5 s"],
  [null, "line.skinning.buffer", "no limit"],
  [null, "line.skinning.crew", "none"],
  [true, "day.closing.finish", "true"],
  [["early", "late"], "day.breaks[0].crews", "[early, late]"],
  [{ lognormal: { mean: "5 s", cv: 0.3 } }, "line.skinning.cycle", "lognormal (mean 5 s, cv 0.3)"],
])("levelWords shows %j at %s as %s", (value, path, words) => {
  expect(levelWords(value, path)).toBe(words);
});
