import type { DayRecord } from "../engine/index.ts";
import type { ResponseInfo } from "./responseInfo.ts";

/** A response: what it is, and how it is read off a day. `of` gives null where the day has no such value. */
export interface Response extends ResponseInfo {
  of(day: DayRecord): number | null;
}
