import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { type DayCourse, recordCourse } from "../../../../sim/day/course/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { serverDocument } from "../../../../viz/index.ts";
import { pictureOf } from "../../../../viz/page/scene/pictureOf.ts";
import { picture, textsOf } from "../../../support/drawing.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

function courseOf(json: unknown): DayCourse {
  const { plan } = readPlan(json, { readText: () => "" });
  return recordCourse(compileLine(plan!), { seed: "picture", replication: 0 });
}

function example(name: string): DayCourse {
  const path = resolve(import.meta.dirname, "../../../../experiments/plans", name);
  return courseOf(JSON.parse(readFileSync(path, "utf8")));
}

function drawn(base: DayCourse, seconds: number, { variant = base, change = "" } = {}): SVGSVGElement {
  const parts = { title: "A line", change, base, variant, seconds, theme: "light" as const };
  return pictureOf(serverDocument(), parts).svg;
}

describe("the picture of a moment", () => {
  it("shows crates, rail, stations and chiller of a line", async () => {
    const svg = drawn(courseOf(SMALL_PLAN), 80 * 60);
    await expect(picture(svg)).toMatchFileSnapshot("../../../pictures/rail.svg");
    expect(textsOf(svg)).toContain("A line, 06:50:00");
    // It moves between two stations so close together that the words stand once.
    expect(textsOf(svg).filter((text) => text === "bottleneck moving").length).toBe(1);
  });

  it("shows chains with their windows, machines beside them and stages off the line", async () => {
    const svg = drawn(example("parts/two-chains.json"), 1800);
    await expect(picture(svg)).toMatchFileSnapshot("../../../pictures/railChains.svg");
  });

  it("sets a variant below the plan, with what is changed and how far it is ahead", () => {
    const variant = courseOf({ ...SMALL_PLAN, crews: [{ name: "dressing", people: { early: 2 } }] });
    const words = textsOf(drawn(courseOf(SMALL_PLAN), 100 * 60, { variant, change: "one person less" }));
    expect(words).toContain("The variant: one person less");
    expect(words.some((text) => /^The variant is \d+ heads, .* behind\.$/u.test(text))).toBe(true);
  });
});
