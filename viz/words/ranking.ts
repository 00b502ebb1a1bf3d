import { formatDecimals } from "../../sim/text/units/index.ts";
import type { ResponseInfo, StudyResults } from "../contract.ts";

/** When a day ends says nothing by itself where one variant works more heads than another. */
const ENDS = new Set(["finish", "lastOut", "cleaningEnd", "overtime"]);
/** Told instead, the first that the study reports: what does not grow with the number of heads. */
const INSTEAD = ["headsPerHour", "costPerHead", "marginPerHead", "costPerKg"];
/** Heads that are hung may differ by so much through the luck of the day: losses in transport and lairage. */
const LUCK = 0.01;

/** By which response a study's variants may be ranked. */
export interface Ranking {
  /** Null where none of those reported can rank them. */
  by: ResponseInfo | null;
  /** Why not by the one asked for; "" where it is that one. */
  words: string;
}

/**
 * The response by which variants may be ranked when a reader asks for `info`: itself, unless it is an end of work and the
 * variants handle different numbers of heads (by more than 1 % of those hung on the first day).
 */
export function ranking(results: StudyResults, info: ResponseInfo): Ranking {
  const hung = results.variants.map(({ day }) => day.heads.hung);
  const [least, most] = [Math.min(...hung), Math.max(...hung)];
  if (!ENDS.has(info.key) || most - least <= LUCK * most) return { by: info, words: "" };
  const by = INSTEAD.flatMap((key) => results.responses.filter((response) => response.key === key))[0] ?? null;
  const heads = `${formatDecimals(least, 0)} to ${formatDecimals(most, 0)} on the first day`;
  const said = `The variants handle different numbers of heads (${heads}), so the end of work alone cannot rank them.`;
  return { by, words: by === null ? `${said} Ask the study for 'headsPerHour' to rank them by throughput.` : said };
}
