import { z } from "zod";
import {
  CLOCK_EXAMPLE,
  CLOCK_PATTERN,
  quantityPattern,
  type Reading,
  readClock,
  readQuantity,
  readShare,
  SHARE_PATTERN,
  type UnitFamily,
} from "../../../text/units/index.ts";

/** Turns a reader of the units room into a schema; `json` is how the published schema describes the written form. */
export function readBy<Value>(read: (written: unknown) => Reading<Value>, json: Record<string, unknown>) {
  return z
    .unknown()
    .meta(json)
    .transform((written, context): Value => {
      const reading = read(written);
      if (reading.fault === null) return reading.value;
      // `scalar` tells the fault's reader that this branch of a choice was not meant for objects.
      context.addIssue({ code: "custom", params: { ...reading.fault, scalar: true } });
      return z.NEVER;
    });
}

/** A quantity of 0 or more (or of the family's least), in SI. */
export function quantity(family: UnitFamily) {
  return readBy((written) => readQuantity(family, written), quantityJson(family));
}

/** A quantity that must be more than 0, in SI. */
export function quantityAboveZero(family: UnitFamily) {
  return readBy((written) => aboveZero(family, written), quantityJson(family));
}

export function clock() {
  return readBy(readClock, { type: "string", pattern: CLOCK_PATTERN, examples: [CLOCK_EXAMPLE] });
}

export function share() {
  return readBy(readShare, SHARE_JSON);
}

/** A share that must be more than 0. */
export function shareAboveZero() {
  return readBy((written) => {
    const reading = readShare(written);
    if (reading.fault !== null || reading.value > 0) return reading;
    const found = `${JSON.stringify(written)} is too small`;
    return {
      value: null,
      fault: { found, allowed: "more than 0 and at most 100 %", remedy: "leave it out of the plan" },
    };
  }, SHARE_JSON);
}

const SHARE_JSON = {
  anyOf: [
    { type: "number", minimum: 0, maximum: 1 },
    { type: "string", pattern: SHARE_PATTERN },
  ],
  examples: ["2.5 %", 0.025],
};

function quantityJson(family: UnitFamily): Record<string, unknown> {
  return { type: "string", pattern: quantityPattern(family), examples: [family.example] };
}

function aboveZero(family: UnitFamily, written: unknown): Reading<number> {
  const reading = readQuantity(family, written);
  if (reading.fault !== null || reading.value > 0) return reading;
  const remedy = `write for example "${family.example}"`;
  return { value: null, fault: { found: `${JSON.stringify(written)} is too small`, allowed: "more than 0", remedy } };
}
