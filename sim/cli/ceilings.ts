import { InvalidArgumentError, Option } from "commander";

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

export function ceilingOption(): Option {
  const words = Object.entries(CEILINGS).map(([name, most]) => `${name}=${most}`);
  return new Option(
    "--ceiling <name=number>",
    `set a ceiling, may be given more than once: megabytes of an input file, events of a day, days of a study (default: ${words.join(", ")})`,
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
