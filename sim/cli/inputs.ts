import { closeSync, constants, fstatSync, openSync, readSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { TextDecoder } from "node:util";
import {
  type Fault,
  flowWarnings,
  formatFault,
  type InputKind,
  inputKind,
  listWords,
  namedPlan,
  type Plan,
  parseJson,
  readPlan,
  type TextFiles,
} from "../asked/plan/index.ts";
import type { Study } from "../asked/study/index.ts";
import { countedDays } from "../day/observations/index.ts";
import { BadInput, PLAN_GUIDE, STUDY_GUIDE } from "./faults.ts";
import { CEILINGS, type Ceilings } from "./options.ts";

export interface LoadedStudy {
  study: Study;
  /** The base plan as it was read, before any checking. */
  basePlan: unknown;
}

interface LoadedPlan {
  plan: Plan;
  /** What it probably does not mean, one line each. */
  warnings: string[];
}

const KINDS: Record<InputKind, { words: string; command: string; name: string }> = {
  plan: { words: "is a plan", command: 'run it with "gambrel day"', name: "a plan" },
  study: { words: "is a study", command: 'run it with "gambrel study"', name: "a study" },
  demand: { words: "is a demand", command: 'size a plan for it with "gambrel size"', name: "a demand" },
  options: {
    words: "is a file of options",
    command: 'compare them with "gambrel options"',
    name: "a file of options",
  },
  improve: {
    words: "is a question for gambrel improve",
    command: 'answer it with "gambrel improve"',
    name: "a question for gambrel improve",
  },
  season: { words: "is a season", command: 'run it with "gambrel season"', name: "a season" },
};

const BYTES_PER_MEGABYTE = 1_000_000;

const BLOCK_BYTES = 1 << 16;

/** Opening a pipe must not wait for somebody to write into it. Not known on every system. */
const NO_WAITING = constants.O_NONBLOCK ?? 0;

/** A file that can be opened and still is nothing to read; the message is the reason with its remedy. */
class UnreadableFile extends Error {}

/** A file named on the command line: its text as it stands, what it says, and the files it may name in turn. */
export interface InputFile {
  path: string;
  text: string;
  json: unknown;
  /** Reads files by the path that this file gives them, from its own folder. */
  files: TextFiles;
}

/** Reads a JSON file; `BadInput` when it is not there, too large, or no JSON. */
export function readInputFile(path: string, { megabytes }: Pick<Ceilings, "megabytes"> = CEILINGS): InputFile {
  const text = readNamedText(path, megabytes);
  const { value, fault } = parseJson(text);
  if (fault !== null) throw refused(path, [fault]);
  const folder = dirname(path);
  const plan = namedPlan(value, { readText: (name) => readTextFile(resolve(folder, name), megabytes) });
  if (plan.fault !== null) throw refused(path, [plan.fault], [PLAN_GUIDE]);
  return { path, text, json: plan.json, files: plan.files };
}

/** The text of a file named on the command line; `BadInput` when it is not there or too large. */
export function readNamedText(path: string, megabytes: number = CEILINGS.megabytes): string {
  try {
    return readTextFile(path, megabytes);
  } catch (error) {
    throw new BadInput([`${path}: ${reasonOf(error)}`]);
  }
}

const REASONS: Record<string, string> = {
  ENOENT: "there is no such file; check the name and the folder you are in.",
  EACCES: "you may not read this file; ask for the right to.",
};

function reasonOf(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return REASONS[code ?? ""] ?? `${message}.`;
}

/**
 * The text of a UTF-8 file of at most so many megabytes. Pipes and devices are refused: they may have no end, or nobody
 * at the other one. Throws an `UnreadableFile`, or the system's own error where the file cannot be opened.
 */
export function readTextFile(path: string, mostMegabytes: number): string {
  if (path.includes("\0")) throw new UnreadableFile("a path cannot contain the character NUL");
  const file = openSync(path, constants.O_RDONLY | NO_WAITING);
  try {
    const about = fstatSync(file);
    if (about.isDirectory()) throw new UnreadableFile("this is a folder; name a file in it");
    if (!about.isFile()) throw new UnreadableFile("this is a pipe or a device; save its output as a file first");
    return decoded(boundedBytes(file, mostMegabytes));
  } finally {
    closeSync(file);
  }
}

/** What a file says of its size is not relied on: it may grow, and some of the system's own say nothing. */
function boundedBytes(file: number, mostMegabytes: number): Buffer {
  const blocks: Buffer[] = [];
  let bytes = 0;
  for (;;) {
    const block = Buffer.alloc(BLOCK_BYTES);
    const got = readSync(file, block);
    if (got === 0) return Buffer.concat(blocks);
    bytes += got;
    if (bytes > mostMegabytes * BYTES_PER_MEGABYTE) throw new UnreadableFile(tooLarge(mostMegabytes));
    blocks.push(block.subarray(0, got));
  }
}

function tooLarge(mostMegabytes: number): string {
  return `this is larger than ${mostMegabytes} MB; is it the right file? If so, raise the ceiling: --ceiling megabytes=${mostMegabytes * 10}`;
}

function decoded(bytes: Buffer): string {
  // Without a byte order mark it would pass for UTF-8 with a NUL in every other place.
  if (bytes.length > 1 && (bytes[0] === 0) !== (bytes[1] === 0))
    throw new UnreadableFile("this is text in UTF-16; save it as UTF-8 first");
  try {
    // A byte order mark stays, for those who read the text to skip.
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new UnreadableFile("this is not text in UTF-8; save it as UTF-8 first");
  }
}

/** A file that shows every sign of another kind than the one wanted is told in one line, not by all that it lacks. */
export function refuseOtherKind({ path, json }: InputFile, wanted: InputKind): void {
  const kind = inputKind(json);
  if (kind === null || kind === wanted) return;
  const { words, command } = KINDS[kind];
  throw new BadInput([`${path}: this ${words}; ${command}, or name ${KINDS[wanted].name}.`]);
}

/** The plan in a file; `BadInput` with every fault when it is not sound. */
export function loadPlan(file: InputFile): Plan {
  return read(file).plan;
}

/** As `loadPlan`, with the warnings; those about the flow of heads take some time to find. */
export function loadPlanWithWarnings(file: InputFile): LoadedPlan {
  const { plan, warnings } = read(file);
  const all = [...warnings, ...flowWarnings(plan, file.json)];
  return { plan, warnings: all.map((warning) => `${file.path}: warning: ${formatFault(warning)}`) };
}

function read(file: InputFile): { plan: Plan; warnings: Fault[] } {
  refuseOtherKind(file, "plan");
  const reading = readPlan(file.json, file.files);
  if (reading.plan !== null) return reading;
  throw refused(file.path, reading.faults, [PLAN_GUIDE]);
}

/** The study in a file; `BadInput` with every fault when it, its plan or one of its variants is not sound. */
export async function loadStudy(file: InputFile, read?: (done: number, total: number) => void): Promise<LoadedStudy> {
  // A study names responses, and what knows them is half of the program: not loaded for a plan.
  const { readStudy } = await import("../asked/study/index.ts");
  const { responsesOf } = await import("../day/observations/index.ts");
  refuseOtherKind(file, "study");
  const { study, basePlan, faults } = readStudy(file.json, file.files, {
    knownResponses: responsesOf,
    ...(read === undefined ? {} : { read }),
  });
  if (study === null) throw refused(file.path, faults, [STUDY_GUIDE, PLAN_GUIDE]);
  return { study, basePlan };
}

/** What was found wrong with a file, a line for each fault, and the documents that say how it must be. */
export function refused(path: string, faults: readonly Fault[], guides: readonly string[] = []): BadInput {
  return new BadInput(
    faults.map((fault) => `${path}: ${formatFault(fault)}`),
    guides,
  );
}

/** A counted working day of the week by its name; `BadInput` says which there are. */
export function dayNamed(plan: Plan, name: string): string {
  if (plan.week === undefined)
    throw new BadInput(["--on: this plan is of one day alone; leave --on out, or name a plan with a week."]);
  const names = countedDays(plan).map((day) => day.name);
  const found = names.find((each) => each.toLowerCase() === name.toLowerCase());
  if (found !== undefined) return found;
  throw new BadInput([
    `--on: '${name}' is no working day of the week that is counted; take one of ${listWords(names)}.`,
  ]);
}
