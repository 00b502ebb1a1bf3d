import type { ListedResponse, ResponseGroup } from "../day/observations/index.ts";
import { counted, type Line, section } from "./terminal.ts";

const BETTER = { more: "more is better", less: "less is better" };
const UNITS: Partial<Record<ListedResponse["format"], string>> = { clock: "time of day", duration: "time" };

/**
 * Responses as a terminal lists them: key, label, unit, and which direction is better. Without `every`, of those that
 * ask the same of each station, crew or limit the first stands for all.
 */
export function responseLines(groups: readonly ResponseGroup[], every: boolean): Line[] {
  const shown = groups.map(({ name, responses }) => ({ name, rows: rowsOf(responses, every) }));
  const widest = Math.min(40, Math.max(...shown.flatMap(({ rows }) => rows.map(({ key }) => key.length))));
  return shown.flatMap(({ name, rows }) =>
    section(
      name,
      rows.map(({ key, words }) => `  ${key.padEnd(widest)}  ${words}`),
    ),
  );
}

function rowsOf(responses: readonly ListedResponse[], every: boolean): { key: string; words: string }[] {
  return responses.flatMap((response, index) => {
    const { key, family } = response;
    if (every) return [{ key, words: wordsOf(response) }];
    if (responses.findIndex((other) => other.family === family) < index) return [];
    const others = responses.filter((other) => other.family === family).length - 1;
    const more = others === 0 ? "" : `; and ${counted(others, "more like it", "more like it")}`;
    return [{ key, words: `${wordsOf(response)}${more}` }];
  });
}

/** "End of work on the line (time of day; less is better)". */
function wordsOf({ label, unit, format, better }: ListedResponse): string {
  const about = [UNITS[format] ?? unit, better === null ? "" : BETTER[better]].filter((word) => word !== "");
  return about.length === 0 ? label : `${label} (${about.join("; ")})`;
}
