import { describe, expect, it } from "vitest";
import { SITE_FIGURES, type SiteKey, siteFigure, siteGroups } from "../../../../sim/asked/plan/index.ts";
import { designOf } from "../../../support/demands.ts";
import { readExample } from "../../../support/readExample.ts";

const withSite = (site: unknown) => readExample("ferncote", (plan) => (plan.site = site));

describe("site", () => {
  it("is not in a plan that says nothing of it, and every figure then has its usual value", () => {
    const { plan } = readExample("ferncote");
    expect(plan.site).toBeUndefined();
    expect(siteFigure(plan, "line.pitch")).toBe(0.3);
    expect(siteFigure(plan, "water.tools") * 3_600_000).toBeCloseTo(15, 9);
    expect(siteFigure(plan, "power.reserve")).toBeCloseTo(0.15, 12);
    for (const key of Object.keys(SITE_FIGURES) as SiteKey[]) expect(siteFigure(plan, key)).toSatisfy(Number.isFinite);
  });

  it("takes every figure in its unit", () => {
    const { plan, faults } = withSite({
      line: { pitch: "25 cm", filled: "90 %" },
      rooms: { changing: 2 },
      cold: { evaporating: "-10 degC" },
    });
    expect(faults).toEqual([]);
    expect(plan.site!.given).toEqual({
      "line.pitch": 0.25,
      "line.filled": 0.9,
      "rooms.changing": 2,
      "cold.evaporating": -10,
    });
    expect(siteFigure(plan, "line.pitch")).toBe(0.25);
    expect(siteFigure(plan, "line.position")).toBe(1.2);
  });

  it("changes nothing else of a plan", () => {
    const { site, ...rest } = withSite({ line: { pitch: "25 cm" } }).plan;
    expect(site).toBeDefined();
    expect(rest).toEqual(readExample("ferncote").plan);
  });

  it("tells every fault with its path and what is allowed", () => {
    const shape = withSite({
      line: { pitsch: "0.3 m", pitch: 0.3, position: "0 m" },
      rooms: { cratesInStack: -1 },
      roomOf: { skinning: "kitchen", skining: "kill" },
      categoryOf: { skins: 4, skin: 3 },
    }).faults.join("\n");
    expect(shape).toMatch(/site\.line\.pitsch: unknown key.*did you mean 'pitch'/);
    expect(shape).toMatch(/site\.line\.pitch: .*0\.3/);
    expect(shape).toMatch(/site\.line\.position: .*too small/);
    expect(shape).toMatch(/site\.rooms\.cratesInStack: /);
    expect(shape).toMatch(/site\.roomOf\.skinning: .*kitchen/);
    expect(shape).toMatch(/site\.categoryOf\.skins: /);
    expect(shape).toMatch(/site\.roomOf\.skining: 'skining' is not a stage or section.*skinning/);
    expect(shape).toMatch(/site\.categoryOf\.skin: 'skin' is not a product.*skins/);
  });

  it("has a group and words for every figure", () => {
    expect(Object.values(siteGroups()).flat()).toEqual(Object.keys(SITE_FIGURES));
    for (const { what, note, source } of Object.values(SITE_FIGURES)) {
      expect(what).not.toBe("");
      expect(note, what).not.toBe("");
      expect(["assumed", "common practice", "published"]).toContain(source);
    }
  });

  it("of a demand goes into its plans word for word", () => {
    const site = { line: { pitch: "40 cm" }, roomOf: { "final trim": "evisceration" } };
    const { design, plan } = designOf({ site });
    expect(design.plan.site).toEqual(site);
    expect(plan.site).toEqual({ given: { "line.pitch": 0.4 }, rooms: site.roomOf, categories: {} });
  });
});
