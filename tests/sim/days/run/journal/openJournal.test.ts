import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { DaySimulator, daySource, type SimulatedDay } from "../../../../../sim/days/run/index.ts";
import { type JournalOptions, type OpenJournal, openJournal } from "../../../../../sim/days/run/journal/index.ts";
import { makerMark } from "../../../../../sim/days/run/wire/index.ts";
import { temporaryFolder } from "../../../../support/temporaryFolder.ts";
import { threeVariants } from "../../../../support/threeVariants.ts";

const SOURCE = daySource(threeVariants(), "binned", false);
const { days: DAYS } = new DaySimulator(SOURCE).simulateBatch({ variant: 2, first: 0, count: 3 });

function open(top: string, change: Partial<JournalOptions> = {}, source = SOURCE): OpenJournal {
  const options = { maker: makerMark("1.0.0"), resume: false, overwrite: false, ...change };
  return openJournal(join(top, "run"), source, options);
}

/** A folder with the journal of a run that was stopped after three days. */
function stopped(days: readonly SimulatedDay[] = DAYS): { top: string; file: string } {
  const top = temporaryFolder();
  const journal = open(top);
  for (const day of days) journal.note(day);
  journal.keep();
  return { top, file: join(top, "run.partial", "journal.jsonl") };
}

describe("openJournal", () => {
  it("keeps days bit for bit for a run that resumes, which adds its own", () => {
    const { top } = stopped(DAYS.slice(0, 2));
    const second = open(top, { resume: true });
    expect(second.known).toEqual(DAYS.slice(0, 2));
    second.note(DAYS[2]!);
    expect(second.keep()).toBe(3);
    expect(open(top, { resume: true }).known).toEqual(DAYS);
  });

  it("leaves nothing behind when the run is done, nor when there was nothing to keep", () => {
    const top = temporaryFolder();
    const done = open(top);
    done.note(DAYS[0]!);
    done.discard();
    expect(open(top).keep()).toBe(0);
    expect(readdirSync(top)).toEqual([]);
  });

  it("drops a torn last line wherever it was torn, and writes on in a new line", () => {
    const whole = stopped();
    const text = readFileSync(whole.file);
    const lastLine = text.lastIndexOf("\n", text.length - 2) + 1;
    for (const length of [text.length - 1, text.length - 20, lastLine + 1, lastLine]) {
      const { top, file } = stopped();
      truncateSync(file, length);
      const journal = open(top, { resume: true });
      expect(journal.known).toEqual(DAYS.slice(0, 2));
      journal.note(DAYS[2]!);
      journal.keep();
      expect(readFileSync(file)).toEqual(text);
    }
  });

  it("takes what a failing disk put behind the last line for torn", () => {
    const { top, file } = stopped();
    appendFileSync(file, "\0\0\0\0");
    expect(open(top, { resume: true }).known).toEqual(DAYS);
  });

  it("refuses a line in the middle that is damaged, and names it", () => {
    const { top, file } = stopped();
    const lines = readFileSync(file, "utf8").split("\n");
    lines[1] = lines[1]!.replace("replication", "replicatiom");
    writeFileSync(file, lines.join("\n"));
    expect(() => open(top, { resume: true })).toThrow(/journal\.jsonl: line 2 is damaged; .*--overwrite/);
    expect(open(top, { overwrite: true }).known).toEqual([]);
  });

  it("refuses an unfinished run that nobody said what to do with, and touches nothing", () => {
    const { top, file } = stopped();
    const before = readFileSync(file);
    expect(() => open(top)).toThrow(/an unfinished run is there; add --resume to finish it, or --overwrite/);
    expect(readFileSync(file)).toEqual(before);
    expect(readdirSync(join(top, "run.partial")).sort()).toEqual(["header.json", "journal.jsonl"]);
  });

  it("refuses to resume with another study, another version or other mathematics, each in one sentence", () => {
    const { top } = stopped();
    const other = daySource(threeVariants({ seed: "other" }), "binned", false);
    expect(() => open(top, { resume: true }, other)).toThrow(/^.*run\.partial: the unfinished run is of another study/);
    const newer = { resume: true, maker: makerMark("2.0.0") };
    expect(() => open(top, newer)).toThrow(/made by another program \(gambrel 1\.0\.0 there, 2\.0\.0 here\)/);
    const elsewhere = { resume: true, maker: { ...makerMark("1.0.0"), arithmetic: "0" } };
    expect(() => open(top, elsewhere)).toThrow(/release of Node\.js/);
    expect(open(top, { resume: true }).known).toEqual(DAYS);
  });

  it("refuses a header it cannot read, unless it may begin anew", () => {
    const { top } = stopped();
    writeFileSync(join(top, "run.partial", "header.json"), '{"format":2}');
    expect(() => open(top, { resume: true })).toThrow(/header\.json: this is not a header that this version can read/);
    expect(open(top, { overwrite: true }).known).toEqual([]);
  });

  it("never touches a folder that holds anything else", () => {
    const top = temporaryFolder();
    mkdirSync(join(top, "run.partial"));
    writeFileSync(join(top, "run.partial", "thesis.txt"), "years of work");
    for (const change of [{}, { overwrite: true }, { resume: true }]) {
      expect(() => open(top, change)).toThrow(/holds a file that is not of an unfinished run \(thesis\.txt\)/);
    }
    expect(readdirSync(join(top, "run.partial"))).toEqual(["thesis.txt"]);
  });

  it("begins at once where a kill left a folder without a header", () => {
    const top = temporaryFolder();
    mkdirSync(join(top, "run.partial"));
    expect(open(top).known).toEqual([]);
    expect(existsSync(join(top, "run.partial", "header.json"))).toBe(true);
  });

  it("never writes through a link that someone put in its place", () => {
    const victim = join(temporaryFolder(), "victim");
    writeFileSync(victim, "dear");
    for (const name of ["header.json", "header.json-new", "journal.jsonl", "lock.json"]) {
      const top = temporaryFolder();
      mkdirSync(join(top, "run.partial"));
      symlinkSync(victim, join(top, "run.partial", name));
      for (const change of [{}, { overwrite: true }, { resume: true }]) {
        expect(() => open(top, change)).toThrow(/holds a file that is not of an unfinished run/);
      }
    }
    const top = temporaryFolder();
    symlinkSync(temporaryFolder(), join(top, "run.partial"));
    expect(() => open(top)).toThrow(/this is a link or a file; move it away/);
    expect(readFileSync(victim, "utf8")).toBe("dear");
  });
});
