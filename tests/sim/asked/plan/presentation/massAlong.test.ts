import { describe, expect, it } from "vitest";
import type { ByProduct } from "../../../../../sim/asked/plan/plan.ts";
import {
  chillLossNames,
  leftBefore,
  lineYield,
  massAlong,
} from "../../../../../sim/asked/plan/presentation/massAlong.ts";
import { chain, dwell, onChain, station } from "../../../../support/plans.ts";

const off = (name: string, share: number, of: ByProduct["of"] = "live weight"): ByProduct => {
  return { name, share, of, vessel: null };
};

/** 100 -> 97 blood -> 77 paws, skin (on a chain) -> 55 viscera -> 53.9 drip of 2 % -> 37.73 legs of 30 %. */
const LINE = [
  station("sticking", 1, { byProducts: [off("blood", 0.03)] }),
  chain("rail", 5, 1, [onChain("skinning", 0, 1, 1, { byProducts: [off("skins", 0.15), off("paws", 0.05)] })]),
  station("evisceration", 1, { byProducts: [off("viscera", 0.22)] }),
  dwell("chilling", 10, 10, { byProducts: [{ ...off("drip", 0.02, "what is left"), chillLoss: true }] }),
  station("cut-up", 1, { byProducts: [off("legs", 0.3, "what is left")] }),
  station("trim", 1, { offLine: true, byProducts: [off("trimmings", 0.5)] }),
];

describe("mass along the line", () => {
  it("goes down share by share, chains included, what stands beside the line not", () => {
    const rows = massAlong(LINE);
    expect(rows.map(({ name }) => name)).toEqual(["blood", "skins", "paws", "viscera", "drip", "legs"]);
    const expected = [0.97, 0.82, 0.77, 0.55, 0.539, 0.3773];
    rows.forEach(({ left }, index) => void expect(left).toBeCloseTo(expected[index]!, 12));
    expect(rows.filter(({ isCut }) => isCut).map(({ name }) => name)).toEqual(["legs"]);
  });

  it("tells what is left before a stage, and the yield hot and cold without what cut-up takes", () => {
    expect(leftBefore(LINE, "evisceration")).toBeCloseTo(0.77, 12);
    expect(leftBefore(LINE, "chilling")).toBeCloseTo(0.55, 12);
    expect(lineYield(LINE, "hot")).toBeCloseTo(0.55, 12);
    expect(lineYield(LINE, "cold")).toBeCloseTo(0.539, 12);
    expect(chillLossNames(LINE)).toEqual(["drip"]);
  });

  it("takes no more than there is", () => {
    const greedy = [
      station("a", 1, { byProducts: [off("all", 1)] }),
      station("b", 1, { byProducts: [off("more", 0.2)] }),
    ];
    expect(massAlong(greedy).map(({ share }) => share)).toEqual([1, 0]);
  });
});
