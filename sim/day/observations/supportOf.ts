import type { Support } from "../../maths/statistics/index.ts";
import type { ResponseInfo } from "./responseInfo.ts";

/** What may be a loss; everything else that is counted, timed or weighed is 0 or more. */
const LOSSES = new Set(["margin", "marginPerHead", "fullMargin"]);

/** What the values of a response can be. A time of day is any number: it counts from the day's start. */
export function supportOf({ key, format }: Pick<ResponseInfo, "key" | "format">): Support {
  if (format === "share") return "share";
  return format === "clock" || LOSSES.has(key) ? "any" : "amount";
}
