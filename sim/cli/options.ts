import { InvalidArgumentError, Option } from "commander";

/** Greatest count an option takes: far beyond use, far within exact arithmetic. */
const MOST = 1_000_000;

export function seedOption(): Option {
  return new Option("--seed <text>", "seed of the random numbers; the same seed gives the same results").argParser(
    (text: string) => {
      if (text.trim() === "") throw new InvalidArgumentError("Give at least one character.");
      return text;
    },
  );
}

export function replicationsOption(): Option {
  return new Option("--replications <count>", "days per variant (default: as the study says)").argParser(
    (text: string) => wholeNumber(text, 1),
  );
}

export function replicationOption(): Option {
  return new Option("--replication <number>", "which day of the seed, counted from 0")
    .default(0)
    .argParser((text: string) => wholeNumber(text, 0));
}

export function tracesOption(): Option {
  return new Option(
    "--traces <kind>",
    "course of each variant's first day: none, bins that lose no peak, or every step",
  )
    .choices(["none", "binned", "exact"])
    .default("binned");
}

export function verifyOption(): Option {
  return new Option("--verify", "check after every event that no head is lost or doubled (slow)");
}

export function overwriteOption(): Option {
  return new Option("--overwrite", "replace an earlier run in that folder; other files are never replaced");
}

export function jsonOption(what: string): Option {
  return new Option("--json", what);
}

function wholeNumber(text: string, least: number): number {
  const value = Number(text);
  if (!/^\d+$/.test(text) || value < least || value > MOST) {
    throw new InvalidArgumentError(`Give a whole number from ${least} to ${MOST}.`);
  }
  return value;
}
