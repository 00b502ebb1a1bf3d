import { appendFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { withKept } from "../../../sim/cli/simulate.ts";
import type { SimulatedDay } from "../../../sim/days/run/index.ts";
import { callCli } from "../../support/callCli.ts";
import { cliFolder } from "../../support/cliFolder.ts";
import { folderDigest } from "../../support/folderDigest.ts";
import { startCli } from "../../support/startCli.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 120_000 };

const ARGS = ["study", "study.json", "--replications", "120", "--out", "run"];

let whole: Promise<Record<string, string>> | null = null;

/** The files of a run in one go: always the same study, so that one run serves all tests. */
function undisturbed(): Promise<Record<string, string>> {
  whole ??= runInOneGo();
  return whole;
}

async function runInOneGo(): Promise<Record<string, string>> {
  const folder = cliFolder();
  expect((await callCli(folder, [...ARGS.slice(0, -1), "whole", "--threads", "1"])).code).toBe(0);
  return folderDigest(join(folder, "whole"));
}

function linesIn(path: string): number {
  return existsSync(path) ? readFileSync(path, "utf8").split("\n").length - 1 : 0;
}

describe("a run that is stopped", PATIENCE, () => {
  it.each([
    ["SIGINT", 130, "1"],
    ["SIGTERM", 143, "2"],
  ] as const)(
    "by %s keeps its days, exits with %i, says how to resume, and resumes to the same files",
    async (signal, code, threads) => {
      const folder = cliFolder();
      const started = startCli(folder, [...ARGS, "--threads", threads]);
      await started.until("(25 %)");
      started.child.kill(signal);
      const { code: found, err } = await started.ended();
      expect(found).toBe(code);
      expect(err).toMatch(/Stopped\. \d+ of 360 days are kept in run\.partial\./);
      const line = /Continue with: gambrel (.*)\n$/.exec(err)![1]!;
      expect(line).toBe(`study study.json --replications 120 --out run --threads ${threads} --resume`);
      expect(readdirSync(folder).sort()).toEqual(["plan.json", "run.partial", "study.json"]);
      expect((await callCli(folder, line.split(" "))).code).toBe(0);
      expect(readdirSync(folder).sort()).toEqual(["plan.json", "run", "study.json"]);
      expect(folderDigest(join(folder, "run"))).toEqual(await undisturbed());
    },
  );

  it("by kill -9 is finished by --resume, on another number of threads, with the same bytes in every file", async () => {
    const folder = cliFolder();
    const journal = join(folder, "run.partial", "journal.jsonl");
    const started = startCli(folder, [...ARGS, "--threads", "2"]);
    await expect.poll(() => linesIn(journal), { timeout: 60_000, interval: 20 }).toBeGreaterThan(20);
    started.child.kill("SIGKILL");
    expect((await started.ended()).signal).toBe("SIGKILL");
    expect(linesIn(journal)).toBeLessThan(360);
    // As if the kill had come in the middle of a line.
    appendFileSync(journal, '{"variant":1,"replication":');
    const refused = await callCli(folder, ARGS);
    expect(refused.code).toBe(2);
    expect(refused.err).toMatch(/run\.partial: an unfinished run is there; add --resume to finish it, or --overwrite/);
    expect((await callCli(folder, [...ARGS, "--resume", "--threads", "1"])).code).toBe(0);
    expect(folderDigest(join(folder, "run"))).toEqual(await undisturbed());
    expect(existsSync(join(folder, "run.partial"))).toBe(false);
  });

  it("shuts a second one out of its folder while it runs, --overwrite or not", async () => {
    const folder = cliFolder();
    const started = startCli(folder, [...ARGS, "--replications", "100000"]);
    await started.until(/./);
    await expect.poll(() => existsSync(join(folder, "run.partial", "header.json")), { timeout: 30_000 }).toBe(true);
    for (const more of [[], ["--overwrite"], ["--resume"]]) {
      const { code, err } = await callCli(folder, [...ARGS, ...more]);
      expect(code).toBe(2);
      expect(err).toMatch(/a run is under way there \(process \d+ on /);
    }
    started.child.kill("SIGKILL");
    await started.ended();
  });

  it("without a folder leaves nothing", async () => {
    const folder = cliFolder();
    const started = startCli(folder, ["study", "study.json", "--replications", "1000", "--json", "--threads", "1"]);
    await started.until("(25 %)");
    started.child.kill("SIGINT");
    const { code, err } = await started.ended();
    expect(code).toBe(130);
    expect(err).toMatch(/Stopped\. Nothing was written\.\n$/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
  });
});

describe("--resume", PATIENCE, () => {
  it("begins from the start where nothing was begun", async () => {
    const folder = cliFolder();
    expect((await callCli(folder, ["study", "study.json", "--out", "run", "--resume"])).code).toBe(0);
    expect(existsSync(join(folder, "run", "results.json"))).toBe(true);
  });

  it("finds the same run finished already, touches nothing, and says what differs in another one", async () => {
    const folder = cliFolder();
    const args = ["study", "study.json", "--replications", "3", "--out", "run"];
    expect((await callCli(folder, args)).code).toBe(0);
    const before = folderDigest(join(folder, "run"));
    const again = await callCli(folder, [...args, "--resume"]);
    expect(again.code).toBe(0);
    expect(again.err).toMatch(/^run: finished already; nothing was simulated or written\.\n/);
    const other = await callCli(folder, [
      "study",
      "study.json",
      "--replications",
      "4",
      "--seed",
      "b",
      "--out",
      "run",
      "--resume",
    ]);
    expect(other.code).toBe(2);
    expect(other.err).toMatch(
      /^run: holds a finished run that differs in the seed \("[^"]*" there, "b" asked\); the simulated days of each variant \(3 there, 4 asked\); name another folder, or add --overwrite/,
    );
    const file = JSON.parse(readFileSync(join(folder, "study.json"), "utf8"));
    writeFileSync(join(folder, "study.json"), JSON.stringify({ ...file, question: "Another one?" }));
    expect((await callCli(folder, [...args, "--resume"])).err).toMatch(/differs in the study file \(question\); name/);
    const traced = await callCli(folder, [...args, "--resume", "--traces", "none"]);
    expect(traced.err).toMatch(/differs in /);
    expect(folderDigest(join(folder, "run"))).toEqual(before);
    expect(existsSync(join(folder, "run.partial"))).toBe(false);
  });

  it("refuses days of another study, which --overwrite throws away", async () => {
    const folder = cliFolder();
    const started = startCli(folder, ARGS);
    await started.until("(25 %)");
    started.child.kill("SIGINT");
    await started.ended();
    const other = ["study", "study.json", "--out", "run", "--seed", "another", "--replications", "2"];
    const { code, err } = await callCli(folder, [...other, "--resume"]);
    expect(code).toBe(2);
    expect(err).toMatch(
      /the unfinished run is of another study \(plan, variants, seed, .*--overwrite without --resume/,
    );
    expect((await callCli(folder, [...other, "--overwrite"])).code).toBe(0);
    expect(existsSync(join(folder, "run.partial"))).toBe(false);
  });

  it("needs a folder", async () => {
    const { code, err } = await callCli(cliFolder(), ["study", "study.json", "--json", "--resume"]);
    expect(code).toBe(2);
    expect(err).toMatch(/a run with --json alone is not kept; add --out/);
  });
});

function day(variant: number, replication: number): SimulatedDay {
  return { variant, replication, values: [], day: null };
}

it("tells a search the days that the disk knows, once each and only those asked for; new ones go to both", () => {
  const told: SimulatedDay[] = [];
  const written: SimulatedDay[] = [];
  const own = { known: [day(0, 0)], note: (each: SimulatedDay) => void told.push(each) };
  const disk = {
    known: [day(0, 0), day(0, 1), day(1, 0), day(1, 0), day(1, 2)],
    note: (each: SimulatedDay) => void written.push(each),
  };
  const joined = withKept(own, disk, { replications: 2 });
  expect(joined.known).toEqual([day(0, 0), day(0, 1), day(1, 0)]);
  expect(told).toEqual([day(0, 1), day(1, 0)]);
  joined.note(day(1, 1));
  expect([told.at(-1), written]).toEqual([day(1, 1), [day(1, 1)]]);
});
