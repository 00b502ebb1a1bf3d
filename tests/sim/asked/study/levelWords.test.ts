import { expect, it } from "vitest";
import { levelWords } from "../../../../sim/asked/study/levelWords.ts";

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
