import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { formatFault } from "../../sim/asked/plan/index.ts";
import { readStudy } from "../../sim/asked/study/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import { runStudy } from "../../sim/days/run/index.ts";

const FOLDER = resolve(import.meta.dirname, "../../experiments/studies");

function read(name: string) {
  const readText = (other: string) => readFileSync(join(FOLDER, other), "utf8");
  return readStudy(JSON.parse(readText(name)), { readText }, { knownResponses: responsesOf });
}

describe("every study in experiments/", () => {
  it.each(readdirSync(FOLDER).filter((name) => name.endsWith(".json")))("%s is sound and asks a question", (name) => {
    const { study, faults } = read(name);
    expect(faults.map(formatFault)).toEqual([]);
    expect(study!.question).toMatch(/\w.*[?.]$/);
    expect(study!.variants.length).toBeGreaterThan(1);
  });

  it("shows a stopping rule with antithetic pairs, a selection and a screening", () => {
    expect(read("until-precise.json").study!.procedure).toMatchObject({ antithetic: true, stopping: { atMost: 200 } });
    expect(read("choose-the-best.json").study!.procedure.selection).toMatchObject({ probability: 0.95 });
    expect(read("screening.json").study!.design).toMatchObject({ kind: "screening", levels: 4 });
  });

  it("chain-speed shows what the notes of its plan say: more heads up to a speed, then none, but more of them unfinished", async () => {
    const study = read("chain-speed.json").study!;
    const responses = ["headsPerHour", "passedUnfinished.abdomen opening", "crew.fork-lift.occupation"];
    const speeds = [1, 2, 0, 3, 5].map((at) => study.variants[at]!);
    // 4.2, 4.5, 4.8 (the base), 5.1 and 6 m/min, by their numbers in the list of levels.
    expect(speeds.map(({ levels }) => levels[0])).toEqual([0, 1, 2, 3, 5]);
    const { variants } = await runStudy(
      { ...study, variants: speeds, replications: 2, responses, why: false },
      { gambrel: "", command: "", traces: "none" },
    );
    const means = (key: string) => variants.map(({ estimates }) => estimates[key]!.mean);
    const heads = means("headsPerHour");
    const gains = heads.slice(1).map((value, at) => value - heads[at]!);
    // On ten of the study's own days 75, 73, 10 and 1 heads an hour, each with a standard error under 2: with two days each
    // bound below is missed with a probability under 0.001.
    expect(gains[0]).toBeGreaterThan(30);
    expect(gains[1]).toBeGreaterThan(30);
    expect(gains[2]).toBeGreaterThan(1);
    expect(Math.abs(gains[3]!)).toBeLessThan(10);
    const unfinished = means("passedUnfinished.abdomen opening");
    expect(unfinished[4]).toBeGreaterThan(1.5 * unfinished[1]!);
    expect(unfinished[4]).toBeGreaterThan(1.2 * unfinished[2]!);
    for (const share of means("crew.fork-lift.occupation")) expect(share).toBeLessThan(0.6);
  });
});
