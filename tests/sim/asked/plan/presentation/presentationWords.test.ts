import { expect, it } from "vitest";
import { presentationWords, publishedName } from "../../../../../sim/asked/plan/presentation/presentationWords.ts";

const ON = { head: "on", paws: "on", liver: "on", kidneys: "on", heartAndLungs: "on" } as const;
const OFF = { head: "off", paws: "off", liver: "off", kidneys: "off", heartAndLungs: "off" } as const;
const AT = { liveWeight: "slaughter" } as const;

it("says what is on and what is off", () => {
  expect(presentationWords({ ...OFF, ...AT, liver: "on", kidneys: "on", weighed: "cold" })).toBe(
    "cold carcass with liver and kidneys, without head, paws and heart and lungs",
  );
  expect(presentationWords({ ...ON, ...AT, weighed: "hot" })).toBe(
    "hot carcass with head, paws, liver, kidneys and heart and lungs",
  );
  expect(presentationWords({ ...OFF, ...AT, weighed: "cold" })).toBe(
    "cold carcass without head, paws, liver, kidneys and heart and lungs",
  );
});

// Blasco, Ouhayoun and Masoero 1993 and Blasco and Ouhayoun 1996, as quoted in theses; the reference carcass from memory.
it("knows the carcasses that are defined in print, and no other", () => {
  expect(publishedName({ ...ON, ...AT, weighed: "hot" })).toMatch(/^hot carcass \(Blasco/u);
  expect(publishedName({ ...ON, ...AT, paws: "off", weighed: "cold" })).toMatch(/^chilled commercial carcass/u);
  expect(publishedName({ ...OFF, ...AT, weighed: "cold" })).toMatch(/^reference carcass/u);
  expect(publishedName({ ...OFF, ...AT, liver: "on", weighed: "cold" })).toBeNull();
  expect(publishedName({ ...ON, ...AT, paws: "off", weighed: "hot" })).toBeNull();
});
