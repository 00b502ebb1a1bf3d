import { expect, it } from "vitest";
import { wholeWarnings } from "../wholeMessages.ts";

it("warns of a vessel that nothing runs into", () => {
  expect(wholeWarnings((plan) => plan.vessels.push({ name: "fat bin", capacity: "1 t", emptying: "5 min" }))).toEqual([
    "vessels[3]: nothing runs into 'fat bin'; name it as the \"vessel\" of what a stage takes off",
  ]);
});
