import { InvalidArgumentError, Option } from "commander";
import type { TraceKind } from "../days/run/index.ts";

/** What can be said of a study on the command line. */
export interface StudyCommandOptions {
  seed?: string;
  replications?: number;
  /** "binned" when left out. */
  traces?: TraceKind;
  verify?: boolean;
  out?: string;
  overwrite?: boolean;
  resume?: boolean;
  threads?: number;
  queue?: string;
  json?: boolean;
  /** Every mean and difference on the terminal, below the verdict. */
  more?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Kinds of files that have a published schema. */
export const SCHEMA_KINDS = ["plan", "study", "demand", "options", "improve", "season"] as const;

export type SchemaKind = (typeof SCHEMA_KINDS)[number];

/**
 * What keeps a slip of the keyboard, or a file made to do harm, from taking the machine; `--ceiling` sets others. The
 * sizes of a plan itself (stages, heads, loads ...) are part of its format and stand in its schema. Events and days are
 * those of `sim/days/run/ceilings.ts`, which is not loaded to say --help.
 */
export const CEILINGS = {
  /** Of one plan, study or table, in megabytes. */
  megabytes: 16,
  /** Of one simulated day. */
  events: 100_000_000,
  /** Of one study, all variants together. */
  days: 1_000_000,
} as const;

export type Ceilings = Record<keyof typeof CEILINGS, number>;

/** Most that a ceiling can be set to: counts are exact up to here. */
const HIGHEST = 1e15;

/** Greatest count an option takes: far beyond use, far within exact arithmetic. */
const MOST = 1_000_000;

/** Those of sim/text/units, named again here so that --help need not load them; a test compares the two. */
export const UNITS_OF_TIME = ["ms", "s", "min", "h", "d"];

/** Those of sim/questions/size, named again here for the same reason; a test compares the two. */
export const KINDS_OF_PLANT = [
  "full line by hand",
  "full line with lift",
  "full line automatic",
  "compact plant",
  "compact plant, fewest people",
] as const;

const MAX_SAMPLES = 9999;

const MAX_CALIBRATION_DAYS = 1000;

const MAX_WORLDS = 10_000;

/** More than any machine has use for; each takes some tens of megabytes. */
const MAX_THREADS = 512;

export function alternativeOption(): Option {
  return new Option(
    "--alternative <name>",
    "kind of plant to write the plan of (default: the one in the demand)",
  ).choices(KINDS_OF_PLANT);
}

export function answerOption(): Option {
  return new Option("--set <key=answer>", "answer to one question, such as heads=1200; may be repeated").argParser(
    (text: string, before: ReadonlyMap<string, string> = new Map()) => {
      const [, key = "", answer = ""] = /^(\w+)=(.*)$/s.exec(text) ?? [];
      if (answer.trim() === "") throw new InvalidArgumentError("Give a key and its answer, such as heads=1200.");
      if (before.has(key)) throw new InvalidArgumentError(`Give ${key} once.`);
      return new Map([...before, [key, answer.trim()]]);
    },
  );
}

export function seedOption(): Option {
  return new Option("--seed <text>", "seed of the random numbers: the same seed gives the same results").argParser(
    (text: string) => {
      if (text.trim() === "") throw new InvalidArgumentError("Give at least one character.");
      return text;
    },
  );
}

export function replicationsOption(what = "simulated days of each variant (default: as the file says)"): Option {
  return new Option("--replications <count>", what).argParser((text: string) => wholeNumber(text, 1));
}

export function simulatedDaysOption(): Option {
  return new Option(
    "--replications <count>",
    "days to simulate of each plan (default: 20; for a dossier as many as take a few minutes)",
  ).argParser((text: string) => wholeNumber(text, 2));
}

export function layoutDaysOption(): Option {
  return new Option("--replications <count>", "days to simulate: loads and peaks are those of these days")
    .default(5)
    .argParser((text: string) => wholeNumber(text, 1));
}

export function whichDayOption(): Option {
  return new Option("--day <number>", "which day of that seed, counted from 1")
    .default(1)
    .argParser((text: string) => wholeNumber(text, 1));
}

export function tracesOption(): Option {
  return new Option(
    "--traces <kind>",
    "how finely to record the first day: not at all, in time bins that keep every peak, or every step",
  ).choices(["none", "binned", "exact"]);
}

/** Of a study, which has several first days. */
export function studyTracesOption(): Option {
  return new Option(
    "--traces <kind>",
    "how finely to record the first day of today's plan and of the best variant: not at all, in time bins that keep every peak, or every step; all: in bins, of every variant",
  ).choices(["none", "binned", "exact", "all"]);
}

export function verifyOption(): Option {
  return new Option("--verify", "check after every event that no head is lost or counted twice (slow)");
}

export function overwriteOption(): Option {
  return new Option("--overwrite", "replace an earlier run in that folder; other files are never replaced");
}

export function jsonOption(what: string): Option {
  return new Option("--json", what);
}

export function moreOption(): Option {
  return new Option("--more", "list every mean, range and difference below the verdict");
}

export function resumeOption(): Option {
  return new Option(
    "--resume",
    "continue a run in that folder that was stopped or killed; its results are the same as without the stop",
  );
}

export function threadsOption(): Option {
  return new Option("--threads <count>", "worker threads (default: one for each core, fewer for few days)").argParser(
    (text: string) => wholeNumber(text, 1, MAX_THREADS),
  );
}

export function queueOption(): Option {
  return new Option(
    "--queue <url>",
    "Redis or Valkey server that hands days to workers: redis://host:6379, or rediss:// for TLS. Put the password in GAMBREL_QUEUE_PASSWORD",
  ).argParser((text: string) => {
    if (!/^rediss?:\/\/./.test(text) || !URL.canParse(text)) {
      throw new InvalidArgumentError("Give an address such as redis://127.0.0.1:6379.");
    }
    return text;
  });
}

export function concurrencyOption(): Option {
  return new Option("--concurrency <count>", "days at a time (default: one for each core)").argParser((text: string) =>
    wholeNumber(text, 1, MAX_THREADS),
  );
}

export function lostAfterOption(): Option {
  return new Option("--lost-after <seconds>", "give a task to another worker when its own was not heard of for so long")
    .default(30)
    .argParser((text: string) => wholeNumber(text, 1, 3600));
}

export function portOption(): Option {
  return new Option("--port <number>", "port of the page")
    .default(0, "a free one")
    .argParser((text: string) => wholeNumber(text, 1, 65_535));
}

export function unitOption(): Option {
  return new Option("--unit <unit>", "unit of times whose heading names no unit").choices(UNITS_OF_TIME);
}

export function byOption(): Option {
  return new Option(
    "--by <heading>",
    "column that names what was timed in each row (default: each column is one station)",
  );
}

export function calibrationDaysOption(): Option {
  return new Option("--days <count>", "days to simulate of the plan and of each change that is followed up")
    .default(40)
    .argParser((text: string) => wholeNumber(text, 5, MAX_CALIBRATION_DAYS));
}

export function worldsOption(): Option {
  return new Option("--worlds <count>", "worlds to draw: in each, every uncertain figure is one thing that it may be")
    .default(40)
    .argParser((text: string) => wholeNumber(text, 10, MAX_WORLDS));
}

/** For a question that is asked in worlds only when that is wanted. */
export function inWorldsOption(): Option {
  return new Option(
    "--worlds <count>",
    "also in so many worlds, in each of which every uncertain figure of the plan is one thing that it may be",
  ).argParser((text: string) => wholeNumber(text, 10, MAX_WORLDS));
}

export function daysOfWorldOption(): Option {
  return new Option("--days <count>", "days (of a plan with a week: weeks) of each variant in each world")
    .default(4)
    .argParser((text: string) => wholeNumber(text, 2, MAX_WORLDS));
}

export function samplesOption(): Option {
  return new Option("--samples <count>", "at most so many simulated samples for each p-value")
    .default(499)
    .argParser((text: string) => wholeNumber(text, 99, MAX_SAMPLES));
}

function wholeNumber(text: string, least: number, most = MOST): number {
  const value = Number(text);
  if (!/^\d+$/.test(text) || value < least || value > most) {
    throw new InvalidArgumentError(`Give a whole number from ${least} to ${most}.`);
  }
  return value;
}

export function ceilingOption(): Option {
  const words = Object.entries(CEILINGS).map(([name, most]) => `${name}=${most}`);
  return new Option(
    "--ceiling <name=number>",
    `raise or lower a limit; may be repeated: megabytes of an input file, events of a day, days of a study (default: ${words.join(", ")})`,
  ).argParser(readCeiling);
}

/** The ceilings with those that were given in place of their own. */
export function ceilingsOf({ ceiling }: { ceiling?: Partial<Ceilings> }): Ceilings {
  return { ...CEILINGS, ...ceiling };
}

/** The same as words of a command line. */
export function ceilingWords({ ceiling = {} }: { ceiling?: Partial<Ceilings> }): string[] {
  return Object.entries(ceiling).flatMap(([name, most]) => ["--ceiling", `${name}=${most}`]);
}

function readCeiling(text: string, before: Partial<Ceilings> = {}): Partial<Ceilings> {
  const [, name = "", digits = ""] = /^(\w+)=(\d+(?:\.\d+)?(?:e\d{1,2})?)$/i.exec(text) ?? [];
  const value = Number(digits);
  if (!Object.hasOwn(CEILINGS, name) || !(value > 0) || value > HIGHEST) {
    const names = Object.keys(CEILINGS).join(", ");
    throw new InvalidArgumentError(`Give one of ${names} with a number, such as events=1e9.`);
  }
  return { ...before, [name]: value };
}
