import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { flowWarnings, formatFault, namedPlan, readPlan } from "../../sim/asked/plan/index.ts";
import { readStudy } from "../../sim/asked/study/index.ts";
import { compileWeek, runWeek } from "../../sim/day/engine/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import type { Decision } from "../../sim/days/results/index.ts";
import { runStudy } from "../../sim/days/run/index.ts";
import { readTries, tryStudyFile, type WrittenOption } from "../../sim/questions/try/index.ts";
import { decisionTable } from "../../viz/words/decisionTable.ts";
import { relativeError } from "../support/relativeError.ts";

const FOLDER = resolve(import.meta.dirname, "../../experiments/weeks");
const FILES = { readText: (name: string) => readFileSync(join(FOLDER, name), "utf8") };
const README = FILES.readText("README.md");
const NAMED = namedPlan(JSON.parse(FILES.readText("quillmarsh-week.json")), FILES);
const JSON_OF_PLAN = NAMED.json as Record<string, unknown>;

function readWeek() {
  const { plan, ...rest } = readPlan(JSON_OF_PLAN, NAMED.files ?? undefined);
  if (plan === null) throw new Error(rest.faults.map(formatFault).join("\n"));
  return { plan, warnings: (rest as { warnings: Parameters<typeof formatFault>[0][] }).warnings };
}

describe("the example week", () => {
  const { plan, warnings } = readWeek();

  it("is sound, warns of nothing, says that it is invented, and has 45 people, three farms and a rush order on Wednesday", () => {
    expect([...warnings, ...flowWarnings(plan, JSON_OF_PLAN)].map(formatFault)).toEqual([]);
    expect(plan.sources[0]).toMatchObject({ path: "", kind: "invented" });
    for (const text of [plan.name, plan.notes, README]) expect(text).toMatch(/invented/);
    for (const { source } of plan.limits) expect(source.length).toBeGreaterThan(20);
    const inShift = plan.day.shifts.map((_, shift) => plan.crews.reduce((sum, { people }) => sum + people[shift]!, 0));
    expect(Math.max(...inShift)).toBe(45);
    const days = plan.week!.days.flatMap((day) => (day.plan === null ? [] : [day.plan]));
    const lots = days.flatMap(({ supply }) => (supply.kind === "loads" ? supply.loads.map(({ lot }) => lot) : []));
    expect(new Set(lots).size).toBe(3);
    expect(plan.week!.orders.some(({ name }) => name === "rush order")).toBe(true);
  });

  it("loses and doubles nothing at any event of a week with a twelfth of the animals", () => {
    const few = JSON.parse(JSON.stringify(JSON_OF_PLAN).replaceAll('"headsPerCrate":12', '"headsPerCrate":1'));
    const thin = readPlan(few, NAMED.files ?? undefined).plan!;
    expect(runWeek(compileWeek(thin), { seed: "experiments", replication: 0, check: true }).status).toBe("finished");
  });

  it("loses and doubles nothing over the days, ends every day before the next, and begins with carcasses of the day before", () => {
    const week = runWeek(compileWeek(plan), { seed: "experiments", replication: 0 });
    expect(week.status).toBe("finished");
    expect(week.days).toHaveLength(6);
    const sum = (masses: Record<string, number>) => Object.values(masses).reduce((total, kg) => total + kg, 0);
    for (const [row, { heads, left }] of week.days.entries()) {
      expect(left).toEqual([]);
      const gone = sum(heads.out) + heads.inLairage + heads.onLine;
      expect(gone).toBe(heads.arrived + heads.fromBefore.inLairage + heads.fromBefore.onLine);
      if (row > 0) expect(heads.fromBefore.onLine).toBe(week.days[row - 1]!.heads.onLine);
    }
    expect(week.days[1]!.heads.fromBefore.onLine).toBeGreaterThan(2000);
    const [first] = week.days;
    const { liveKg, byProductsKg, outKg, onLineKg } = first!.masses;
    expect(relativeError(sum(byProductsKg) + sum(outKg) + onLineKg, liveKg)).toBeLessThan(1e-9);
  });
});

/** A question of the README: its command, and the rows of the table below it. */
interface Question {
  title: string;
  options: WrittenOption[];
  rows: { name: string; end: number; money: number }[];
}

const minutes = (clock: string) => Number(clock.split(":")[0]) * 60 + Number(clock.split(":")[1]);

function questionsOf(text: string): Question[] {
  return text.split(/^## /m).flatMap((section) => {
    const [, command] = /^ {4}gambrel try quillmarsh-week\.json (.+)$/m.exec(section) ?? [];
    if (command === undefined) return [];
    const options = [...command.matchAll(/--([\w-]+)(?: (?:"([^"]*)"|([^-\s]\S*)))?/g)]
      .map(([, option, quoted, bare]) => ({ option: option!, text: quoted ?? bare ?? "" }))
      .filter(({ option }) => option !== "days");
    const rows = [...section.matchAll(/^\| (.+?) +\| +(\d\d:\d\d) .*\| +([+\u2212-]?[\d,]*)(?: EUR)? +\|$/gm)].map(
      (found) => ({
        name: found[1]!,
        end: minutes(found[2]!),
        money: Number(found[3]!.replace("\u2212", "-").replace(",", "")),
      }),
    );
    return [{ title: section.split("\n")[0]!, options, rows }];
  });
}

const QUESTIONS = questionsOf(README);
const WEEKS = 2;

async function answered(options: readonly WrittenOption[]): Promise<Decision> {
  const { plan } = readWeek();
  const { tries, faults } = readTries(plan, JSON_OF_PLAN, options);
  if (tries === null) throw new Error(faults.map(formatFault).join("\n"));
  const written = tryStudyFile(plan, JSON_OF_PLAN, { tries, seed: "afresh", days: WEEKS, matters: [] });
  const reading = readStudy(written, NAMED.files ?? undefined, { knownResponses: responsesOf });
  const { decision } = await runStudy(reading.study!, { gambrel: "1", command: "c" });
  return decision!;
}

describe("the planner's Monday", () => {
  it("has five questions, each with one command", () => {
    expect(QUESTIONS.map(({ title }) => title)).toHaveLength(5);
    for (const { rows } of QUESTIONS) expect(rows.length).toBeGreaterThan(1);
  });

  // Tries of each crew in whole weeks take minutes, and one question is part of another: they are not simulated again.
  const isSimulated = ({ options }: (typeof QUESTIONS)[number]) => {
    const own = JSON.stringify(options).slice(0, -1);
    const others = QUESTIONS.filter((other) => other.options !== options);
    const isPart = others.some((other) => JSON.stringify(other.options).startsWith(own));
    return !isPart && !options.some(({ text }) => text.startsWith("each="));
  };
  for (const { title, options, rows } of QUESTIONS.filter(isSimulated)) {
    it(`${title}: other weeks tell the same`, async () => {
      const decision = await answered(options);
      const start = readWeek().plan.day.startClockSeconds;
      const shown = decisionTable(decision, start, { rows: 12 });
      for (const [index, row] of decision.rows.entries()) {
        const told = rows.find(({ name }) => name === (index === 0 ? "as planned" : row.name));
        expect(told, row.name).toBeDefined();
        // What it does to the end of work: the same luck befalls both plans, so this varies less than the end itself.
        const later = minutes(shown.rows[index]!.cells[0]!.value) - minutes(shown.rows[0]!.cells[0]!.value);
        expect(Math.abs(later - (told!.end - rows[0]!.end)), row.name).toBeLessThanOrEqual(12);
        if (Math.abs(told!.money) > 300) expect(Math.sign(row.money!.perDay.mean)).toBe(Math.sign(told!.money));
      }
    });
  }
});
