import { readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { readPlan } from "../../sim/asked/plan/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import { chartFiles, chartTables, renderReport } from "../../viz/index.ts";
import { syntheticFactorial, syntheticStudy } from "../support/syntheticStudy.ts";
import { forbiddenIn, TERMS } from "./terms.ts";

const PLANS = resolve(import.meta.dirname, "../../experiments/plans");

/** Labels and headings that still say something else, each with its reason; take a line away once its text is mended. */
const EXCEPTIONS: readonly { text: RegExp; reason: string }[] = [
  {
    text: /^(.*: )?(waits for heads \(starved\)|cannot pass its head on \(blocked\))($|,|% of)/u,
    reason: "states of a station: plain words with the exact one behind them, where the columns of data have it as key",
  },
  {
    text: /: its dwell$/u,
    reason: "by the kind of the stage in the plan; to be said as the time that heads stay there",
  },
];

function labels(): string[] {
  const files = readdirSync(PLANS, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".json"));
  const all = files.flatMap((name) => {
    const path = resolve(PLANS, name);
    const reader = { readText: (beside: string) => readFileSync(resolve(path, "..", beside), "utf8") };
    const { plan } = readPlan(JSON.parse(readFileSync(path, "utf8")), reader);
    return plan === null ? [] : responsesOf(plan).map(({ label }) => label);
  });
  return [...new Set(all)];
}

/** Elements that name what follows, without the markup in them. */
function headings(html: string, tags: string): string[] {
  const found = html.matchAll(new RegExp(`<(${tags})\\b[^>]*>(.*?)</\\1>`, "gsu"));
  return [...new Set([...found].map(([, , inner]) => inner!.replace(/<[^>]*>/gu, "").trim()))].filter(Boolean);
}

function offences(texts: readonly string[]): string[] {
  return texts
    .filter((text) => !EXCEPTIONS.some((exception) => exception.text.test(text)))
    .flatMap((text) => forbiddenIn(text).map(({ word, say }) => `"${text}" says ${word}; say ${say}`));
}

describe("the list of terms", () => {
  it("has one name for a thing: none is forbidden by another, and none twice", () => {
    expect(TERMS.flatMap(({ say }) => forbiddenIn(say))).toEqual([]);
    const instead = TERMS.flatMap((term) => term.instead);
    expect(new Set(instead).size).toBe(instead.length);
  });

  it("finds whole words, whatever their case, and no parts of words", () => {
    expect(forbiddenIn("Starved before skinning").map(({ word }) => word)).toEqual(["starved"]);
    expect(forbiddenIn("Paired replications")).toHaveLength(2);
    expect(forbiddenIn("Repaired; indwelling; unblocked")).toEqual([]);
  });

  it("is kept by the labels of every response of every plan that comes with the project", () => {
    const found = labels();
    expect(found.length).toBeGreaterThan(500);
    expect(offences(found)).toEqual([]);
  });

  it.each([
    ["a list of variants", syntheticStudy],
    ["a factorial", syntheticFactorial],
  ])("is kept by the headings, captions and columns of a report of %s, and by its pictures", (_, make) => {
    const results = make();
    const report = headings(renderReport(results), "h1|h2|h3|h4|th|caption|figcaption");
    const pictures = chartFiles(results).flatMap(({ svg }) => headings(svg, "title"));
    const tables = chartTables(results, undefined).flatMap(({ title, table }) => [
      title,
      ...table.columns.map(({ name }) => name),
    ]);
    expect(report.length).toBeGreaterThan(10);
    expect(pictures.length).toBeGreaterThan(3);
    expect(offences([...report, ...pictures, ...tables])).toEqual([]);
  });
});
