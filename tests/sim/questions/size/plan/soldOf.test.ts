import { expect, it } from "vitest";
import { soldOf } from "../../../../../sim/questions/size/plan/soldOf.ts";
import { demandOf } from "../../../../support/demands.ts";

it("knows what is sold where the steps take off the usual parts, and leaves it open elsewhere", () => {
  expect(soldOf(demandOf({}))).toMatchObject({ head: "off", liver: "on", chillLoss: "2 %" });
  const own = { steps: { evisceration: { takesOff: [{ name: "offal", share: "18 %" }] } } };
  expect(soldOf(demandOf(own))).toBeNull();
});
