import { expect, it } from "vitest";
import { placesWords } from "../../../../viz/page/scene/drawStation.ts";

it("never says that more heads wait than there are places for: one may wait at an idle position", () => {
  expect(placesWords(5, 6)).toBe(" of 6");
  expect(placesWords(7, 6)).toBe(" (6 places)");
  expect(placesWords(7, Number.POSITIVE_INFINITY)).toBe("");
});
