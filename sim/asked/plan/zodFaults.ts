import type { z } from "zod";
import { foundWords, type ReadingFault } from "../../text/units/index.ts";
import type { Fault } from "./fault.ts";
import { formatPath } from "./formatPath.ts";
import { isRecord } from "./isRecord.ts";
import { listWords } from "./listWords.ts";
import { nearestWords } from "./nearestName.ts";
import { ONE_OF } from "./schema/record.ts";

type Issue = z.core.$ZodIssue;
type Steps = readonly PropertyKey[];

/**
 * Turns what the schema found into faults in plain words. The issues must carry their input (`reportInput: true`), and
 * objects must come from `record`, which passes the valid keys on.
 */
export function zodFaults(issues: readonly Issue[], at: Steps = []): Fault[] {
  return issues.filter(isNoRepeat).flatMap((issue) => faultsOf(issue, [...at, ...issue.path]));
}

/** Of a number that exceeds what a whole number can be, only the bound that its key has is told. */
function isNoRepeat(issue: Issue, index: number, all: readonly Issue[]): boolean {
  if (issue.code !== "too_big" && issue.code !== "too_small") return true;
  const path = formatPath(issue.path);
  return !all.some((other, at) => at > index && other.code === issue.code && formatPath(other.path) === path);
}

function faultsOf(issue: Issue, steps: Steps): Fault[] {
  switch (issue.code) {
    case "custom":
      return [customFault(issue, steps)];
    case "invalid_type":
      return [fault(steps, found(issue, complaintOf(issue)), allowedKind(issue), "")];
    case "too_small":
      return [sizeFault(issue, steps, "small", issue.minimum, issue.inclusive ? "or more" : "")];
    case "too_big":
      return [sizeFault(issue, steps, "large", issue.maximum, issue.inclusive ? "or less" : "")];
    case "invalid_value":
      return [choiceFault(issue.input, issue.values, steps)];
    case "unrecognized_keys":
      return issue.keys.map((key) => unknownKey(key, issue.message.split(" "), steps));
    case "invalid_union":
      return unionFaults(issue, steps);
    default:
      return [fault(steps, found(issue, "is not allowed here"), "", "see the list of keys for this file")];
  }
}

function allowedKind({ expected, message }: Issue & { code: "invalid_type" }): string {
  return message.startsWith(ONE_OF) ? `${kindWords(expected)} with ${message}` : kindWords(expected);
}

function customFault(issue: Issue & { code: "custom" }, steps: Steps): Fault {
  const words = issue.params as ReadingFault;
  return fault(steps, issue.input === undefined ? "missing" : words.found, words.allowed, words.remedy);
}

function unknownKey(key: string, valid: readonly string[], steps: Steps): Fault {
  const remedy = nearestWords(key, valid, "delete it or write one of these");
  return fault([...steps, key], "unknown key", listWords(valid), remedy);
}

function sizeFault(
  issue: Issue & { code: "too_small" | "too_big" },
  steps: Steps,
  word: string,
  bound: number | bigint,
  direction: string,
): Fault {
  if (issue.origin === "array")
    return fault(steps, lengthWords(issue.input, "entries"), `${bound} ${direction} entries`, "");
  if (issue.origin === "string")
    return fault(steps, lengthWords(issue.input, "characters"), `${bound} ${direction} characters`, "");
  const allowed = direction === "" ? `${word === "small" ? "more" : "less"} than ${bound}` : `${bound} ${direction}`;
  return fault(steps, `${foundWords(issue.input)} is too ${word}`, allowed, "");
}

function lengthWords(value: unknown, what: string): string {
  return `${(value as { length: number }).length} ${what}`;
}

function choiceFault(value: unknown, values: readonly unknown[], steps: Steps): Fault {
  const words = values.map(String);
  const first = value === undefined ? "missing" : `${foundWords(value)} is not one of the choices`;
  const allowed = typeof values[0] === "string" ? listWords(words) : words.join(", ");
  return fault(steps, first, allowed, nearestWords(String(value), words, "write one of these"));
}

/** A choice of shapes: tells what is wrong with the shape that was meant, judged by the kind of value found. */
function unionFaults(issue: Issue & { code: "invalid_union" }, steps: Steps): Fault[] {
  if ("discriminator" in issue) return [discriminatorFault(issue, steps)];
  const meant = issue.errors.filter((branch) => !branch.some((one) => isWrongKind(one, issue.input)));
  if (meant[0] !== undefined) return zodFaults(meant[0], steps);
  const kinds = issue.errors.flat().filter((one) => one.code === "invalid_type");
  const allowed = kinds.map((one) => kindWords(one.expected)).join(" or ");
  return [fault(steps, found(issue, "is of the wrong kind"), allowed, "")];
}

function discriminatorFault(issue: Issue & { code: "invalid_union" }, steps: Steps): Fault {
  const { discriminator, options } = issue as unknown as { discriminator: string; options: unknown[] };
  const given = isRecord(issue.input) ? issue.input[discriminator] : undefined;
  return choiceFault(given, options, steps);
}

function isWrongKind(issue: Issue, input: unknown): boolean {
  if (issue.path.length > 0) return false;
  if (issue.code === "invalid_type") return true;
  return issue.code === "custom" && issue.params?.scalar === true && isRecord(input);
}

function complaintOf(issue: Issue & { code: "invalid_type" }): string {
  return typeof issue.input === "number" && issue.expected === "int" ? "is not whole" : "is of the wrong kind";
}

function found(issue: Issue, complaint: string): string {
  return issue.input === undefined ? "missing" : `${foundWords(issue.input)} ${complaint}`;
}

const KINDS: Record<string, string> = {
  string: "a text in double quotes",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  object: "an object { }",
  record: "an object { }",
  array: "a list [ ]",
  null: "null",
};

function kindWords(expected: string): string {
  return KINDS[expected] ?? expected;
}

function fault(steps: Steps, foundText: string, allowed: string, remedy: string): Fault {
  return { path: formatPath(steps), found: foundText, allowed, remedy };
}
