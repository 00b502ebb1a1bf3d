import { existsSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { namedPlan, type Plan, readPlan } from "../../sim/asked/plan/index.ts";
import { program } from "../../sim/cli/program.ts";
import { responsesOf, usualResponses } from "../../sim/day/observations/index.ts";
import { weekStudy } from "../../sim/questions/week/index.ts";
import { fakeTerminal } from "../support/fakeTerminal.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const TEXT = readFileSync(join(ROOT, "experiments/questions/README.md"), "utf8");
const EACH = 10;

interface Row {
  asker: string;
  question: string;
  command: string;
  results: string[];
  missing: string;
  answer: string;
  right: string;
}

function rowsOf(section: string): Row[] {
  const [asker = ""] = section.split("\n");
  const rows = section.split("\n").filter((line) => line.startsWith("| ") && !/^\| (question|-)/.test(line));
  return rows.map((line) => {
    const [question, command, results, missing, answer, right] = line
      .split("|")
      .slice(1)
      .map((cell) => cell.trim());
    const named = [...results!.matchAll(/`([^`]+)`/g)].map((match) => match[1]!);
    return {
      asker,
      question: question!,
      command: command!.replaceAll("`", ""),
      results: named,
      missing: missing!,
      answer: answer!,
      right: right!,
    };
  });
}

const ROWS = TEXT.split(/^## /m).slice(1).flatMap(rowsOf);
const ANSWERED = ROWS.filter(({ command }) => command !== "none");

const jsonIn = (path: string) => JSON.parse(readFileSync(path, "utf8"));

function planIn(path: string): Plan {
  const readText = (name: string) => readFileSync(resolve(dirname(path), name), "utf8");
  const named = namedPlan(jsonIn(path), { readText });
  const { plan } = readPlan(named.json, named.files);
  if (plan === null) throw new Error(`${path} is not sound`);
  return plan;
}

/** Words of a command line as a shell would give them. */
function wordsOf(command: string): string[] {
  return [...command.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2]!);
}

/** What stands behind an option, up to the next one. */
function valuesOf(command: string, option: string): string[] {
  const words = wordsOf(command);
  return words.flatMap((word, at) => {
    if (word !== option) return [];
    const rest = words.slice(at + 1);
    const end = rest.findIndex((each) => each.startsWith("--"));
    return end === -1 ? rest : rest.slice(0, end);
  });
}

/** Keys that this command tells of: those that a study or a try names, and those of a day that are told unasked. */
function told(command: string): string[] {
  const [, name, file = ""] = command.split(" ");
  const path = join(ROOT, file);
  if (name === "day") return usualResponses(planIn(path));
  if (name === "week") return weekStudy(planIn(path), "1", 2).responses;
  if (name === "try") {
    const known = new Set(responsesOf(planIn(path)).map(({ key }) => key));
    const [decides = "finish"] = valuesOf(command, "--decides");
    return [decides, ...valuesOf(command, "--also")].filter((key) => known.has(key));
  }
  if (name !== "study") return [];
  const { plan, responses } = jsonIn(path);
  const known = responsesOf(planIn(resolve(dirname(path), plan))).map(({ key }) => key);
  return responses.filter((key: string) => known.includes(key));
}

function share(rows: readonly Row[]) {
  const none = rows.filter(({ command }) => command === "none").length;
  const part = rows.filter(({ command, missing }) => command !== "none" && missing.startsWith("in part")).length;
  return { whole: rows.length - none - part, part, none };
}

describe("the questions of planner, engineer and owner", () => {
  it("are ten of each, none asked twice", () => {
    const askers = ["Planner", "Process engineer", "Owner"];
    expect(askers.map((asker) => ROWS.filter((row) => row.asker === asker).length)).toEqual([EACH, EACH, EACH]);
    expect(new Set(ROWS.map(({ question }) => question)).size).toBe(ROWS.length);
  });

  it.each(ANSWERED)("$question: the command is understood, and its files are there", async ({ command }) => {
    const [gambrel, ...words] = wordsOf(command);
    expect(gambrel).toBe("gambrel");
    const line = program(async () => fakeTerminal(false).terminal);
    for (const each of [line, ...line.commands]) each.configureOutput({ writeErr: () => {}, writeOut: () => {} });
    const called = line.commands.find((each) => each.name() === words[0]);
    let ran = 0;
    called?.action(() => {
      ran++;
    });
    await line.parseAsync(words, { from: "user" });
    expect(ran).toBe(1);
    for (const word of words.filter((each) => each.startsWith("experiments/")))
      expect([word, existsSync(join(ROOT, word))]).toEqual([word, true]);
  });

  it.each(ANSWERED)("$question: the command gives the results that are named", ({ command, results }) => {
    expect(told(command)).toEqual(expect.arrayContaining(results));
  });

  it("say what is missing wherever no single command answers, and whether the answer is in part", () => {
    for (const { command, missing } of ROWS) {
      if (command === "none") expect(missing).not.toBe("");
      else expect(missing).toMatch(/^$|^in part: /);
    }
  });

  it("say what a reader of the first pages answered, and whether it is right, wherever a command answers", () => {
    for (const { command, answer, right } of ROWS) {
      expect([command, answer === ""]).toEqual([command, command === "none"]);
      expect(right).toMatch(command === "none" ? /^$/ : /^(yes|no: .+)$/);
    }
  });

  it("are counted as they stand in the table", () => {
    const { whole, part, none } = share(ROWS);
    expect(TEXT).toContain(`Of thirty, ${whole} are answered whole by one command, ${part} in part, ${none} by none.`);
  });
});
