import { describe, expect, it } from "vitest";
import { nearestName, nearestWords } from "../../../../sim/asked/plan/nearestName.ts";

const NAMES = ["hanging", "skinning", "evisceration"];

describe("nearestName", () => {
  it.each([
    ["evisceratoin", "evisceration"],
    ["Skinning", "skinning"],
    ["hangin", "hanging"],
  ])("takes %s for %s", (written, name) => {
    expect(nearestName(written, NAMES)).toBe(name);
  });

  it("suggests nothing when nothing is near, or there are no names", () => {
    expect(nearestName("chilling room", NAMES)).toBeNull();
    expect(nearestName("hanging", [])).toBeNull();
  });
});

describe("nearestWords", () => {
  it("asks whether the near name was meant, and else says what to do", () => {
    expect(nearestWords("hangin", NAMES, "write one of these")).toBe("did you mean 'hanging'?");
    expect(nearestWords("cut-up", NAMES, "write one of these")).toBe("write one of these");
  });
});
