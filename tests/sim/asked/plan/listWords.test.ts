import { expect, it } from "vitest";
import { listWords } from "../../../../sim/asked/plan/listWords.ts";

it("listWords quotes names, says so when there are none, and cuts long lists after sixteen", () => {
  expect(listWords([])).toBe("none");
  expect(listWords(["a", "b"])).toBe("'a', 'b'");
  const many = Array.from({ length: 20 }, (_, index) => `n${index}`);
  expect(listWords(many)).toMatch(/'n15' and 4 more$/u);
});
