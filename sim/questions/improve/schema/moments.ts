import { clock, name, quantityAboveZero, record } from "../../../asked/plan/index.ts";
import { time } from "../../../text/units/index.ts";

/** Something with an hour that may be moved. */
export function moments(what: string) {
  return record(momentKeys()).describe(`A ${what}.`);
}

export function momentKeys() {
  return {
    name: name().describe("As the plan names it."),
    from: clock().describe("Earliest moment; today's or before it."),
    to: clock().describe("Latest moment; today's or after it."),
    step: quantityAboveZero(time).prefault("15 min").describe("From today's moment on, both ways."),
  };
}

export function gaps() {
  return record(gapKeys()).describe(GAP);
}

export const GAP = "Time from one lorry to the next of a load that repeats; the first one stays.";

export function gapKeys() {
  return {
    load: name().describe("A load of the plan that repeats."),
    from: quantityAboveZero(time).describe("Shortest; today's or less."),
    to: quantityAboveZero(time).describe("Longest; today's or more."),
    step: quantityAboveZero(time).prefault("5 min").describe("From today's gap on, both ways."),
  };
}
