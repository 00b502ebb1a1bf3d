import { expect, it } from "vitest";
import { toByProducts } from "../../../../../sim/asked/plan/parts/toByProducts.ts";
import { readExample } from "../../../../support/readExample.ts";

const { plan } = readExample("parts/presentation");
const anatomy = { presentation: plan.presentation, bodyParts: plan.bodyParts };
const written = (more: object) => ({ name: "x", of: "live weight" as const, vessel: null, ...more });

it("leaves a share as it is written", () => {
  const none = { presentation: null, bodyParts: null };
  expect(toByProducts([written({ share: 0.2, of: "what is left" })], none)).toEqual([
    { name: "x", share: 0.2, of: "what is left", vessel: null },
  ]);
});

it("adds the parts that are not sold, and takes drip from what is left", () => {
  expect(toByProducts([written({ parts: ["gut", "heartAndLungs", "kidneys"] })], anatomy)[0]).toMatchObject({
    share: 0.2,
    of: "live weight",
  });
  expect(toByProducts([written({ parts: ["kidneys"] })], anatomy)[0]!.share).toBe(0);
  expect(toByProducts([written({ parts: ["chillLoss"] })], anatomy)[0]).toMatchObject({
    share: 0.02,
    of: "what is left",
    chillLoss: true,
  });
});
