import type { Found, Improvement } from "../questions/improve/index.ts";
import { formatConfidence, formatEstimate, formatNumber, groupDigits, textTable } from "../text/units/index.ts";
import type { SummaryLine } from "./sizeSummary.ts";

/** What was found as lines of text: the recommendation, what it shares out, the finalists, and the trade-off curve. */
export function improveSummary(found: Improvement): SummaryLine[] {
  return [
    ...section("Recommendation", found.words),
    ...(found.recommended === null ? [] : section("What is shared out", sharesTable(found))),
    ...section("Finalists", finalistsTable(found)),
    ...(found.curve.length === 0 ? [] : section("What more of the total brings", curveTable(found))),
  ];
}

function section(title: string, lines: readonly string[]): SummaryLine[] {
  return [
    { line: "", style: "plain" },
    { line: title, style: "bold" },
    ...lines.map((line): SummaryLine => ({ line, style: "plain" })),
  ];
}

function sharesTable({ allocated, recommended }: Improvement): string[] {
  const { kind, elements, unit } = allocated;
  const counts = recommended!.counts ?? elements.map(({ base }) => base);
  const shown = (count: number | null) => {
    if (count === null) return "-";
    return kind === "budget" ? (count === 1 ? "bought" : "not bought") : groupDigits(formatNumber(count));
  };
  return textTable([
    ["", "as it is", "recommended"],
    ...elements.map(({ name, base }, index) => [name, shown(base), shown(counts[index]!)]),
    [`of ${groupDigits(formatNumber(allocated.most))} ${unit}`, "", usesOf(recommended!)],
  ]);
}

function finalistsTable(found: Improvement): string[] {
  const picked = found.recommended?.name;
  const limited = found.recommended === null || found.recommended.limits.length > 0;
  return textTable([
    ["", found.allocated.unit, headOf(found), "days", limited ? "limits" : "", ""],
    ...found.finalists.map((finalist) => [
      finalist.name,
      usesOf(finalist),
      goalOf(finalist, found),
      String(finalist.goal?.n ?? 0),
      limited ? finalist.limits : "",
      finalist.name === picked
        ? "recommended"
        : finalist.droppedAfter === null
          ? ""
          : `dropped after ${finalist.droppedAfter} days`,
    ]),
  ]);
}

function curveTable(found: Improvement): string[] {
  return [
    ...textTable([
      [found.allocated.unit, "", headOf(found), ""],
      ...found.curve.map((point) => [
        usesOf(point),
        point.name,
        goalOf(point, found),
        [point.undominated ? "" : "another gives as much for less", point.keepsLimits ? "" : "beyond a limit"]
          .filter((words) => words !== "")
          .join(", "),
      ]),
    ]),
    "The best that was tried for no more than each total; every interval by itself.",
  ];
}

function usesOf({ uses }: Found): string {
  return uses === null ? "-" : groupDigits(formatNumber(uses));
}

function goalOf({ goal }: Found, { goal: info }: Improvement): string {
  if (goal === null) return "-";
  const [mean, range] = formatEstimate(goal, info.format === "number" ? { ...info, unit: "" } : info, 0);
  return groupDigits(range === "" ? mean : `${mean} (${range})`);
}

/** What the column holds; a number's unit is said here, once. */
function headOf({ goal, confidence }: Improvement): string {
  const unit = goal.format === "number" ? ` [${goal.unit}]` : "";
  return `${goal.label}${unit}, ${formatConfidence(confidence)} interval`;
}
