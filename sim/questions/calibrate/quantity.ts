import type { ResponseInfo } from "../../day/observations/index.ts";

/** What is compared: heads counted in a stretch of the day, or a response of the plan. */
export type Quantity =
  | {
      kind: "count";
      /** As a clock shows it: "06:00-07:00". */
      label: string;
      /** Seconds after the day's start; from <= time < to. */
      fromSeconds: number;
      toSeconds: number;
    }
  | { kind: "response"; label: string; info: ResponseInfo };

/** How the values of a quantity are to be shown. */
export function infoOf(quantity: Quantity): ResponseInfo {
  if (quantity.kind === "response") return quantity.info;
  return { key: quantity.label, label: quantity.label, unit: "heads", format: "number", better: null };
}
