import { z } from "zod";
import { foundWords, type Reading } from "../../../text/units/index.ts";
import { readBy } from "./readBy.ts";

const LONGEST_NAME = 60;
const LONGEST_TEXT = 10_000;
const ALLOWED = `1 to ${LONGEST_NAME} printable characters, none of them a space at either end`;

/**
 * A name: 1 to 60 printable characters. Words that every object already answers to ("constructor", "__proto__") are
 * refused, because names become keys of results.
 */
export function name() {
  return readBy(readName, { type: "string", minLength: 1, maxLength: LONGEST_NAME });
}

/** Words of any length up to 10,000 characters, line breaks included. */
export function freeText() {
  return z.string().max(LONGEST_TEXT);
}

/** As `freeText`, but something must be said. */
export function saidText() {
  return z.string().min(1).max(LONGEST_TEXT);
}

/** The name of another part of the plan; the rules check that it is there. */
export function reference() {
  return z.string();
}

function readName(written: unknown): Reading<string> {
  if (typeof written !== "string") return wrong(`${foundWords(written)} is not a name`);
  const length = [...written].length;
  if (length === 0) return wrong("the name is empty");
  if (length > LONGEST_NAME) return wrong(`the name has ${length} characters`);
  if (written.trim() !== written) return wrong(`${foundWords(written)} starts or ends with a space`);
  if (/[\p{C}\p{Zl}\p{Zp}]/u.test(written)) return wrong(`${foundWords(written)} contains an invisible character`);
  if (written in Object.prototype || written === "prototype") return wrong(`'${written}' is a reserved word`);
  return { value: written, fault: null };
}

function wrong(found: string): Reading<never> {
  return { value: null, fault: { found, allowed: ALLOWED, remedy: 'write a name such as "skinning"' } };
}
