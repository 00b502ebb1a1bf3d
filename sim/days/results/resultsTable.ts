import { factorColumn } from "./factorColumn.ts";
import type { ResponseInfo, StudyResults, VariantResults } from "./studyResults.ts";
import { levelsOf } from "./valueRows.ts";
import type { SheetCell, SheetTable } from "./workbook.ts";

const NAMES = [
  ...["Result", "Unit", "Days", "Mean", "Mean, low", "Mean, high", "Least", "Most"],
  ...["Difference", "Difference, low", "Difference, high", "Unit of difference", "Difference shown"],
];

/** Every result of every variant for a sheet, with cells of their kind: shares, times of day, numbers. */
export function resultsTable(results: StudyResults): SheetTable {
  const columns = ["Variant", ...results.factors.map((factor) => factorColumn(factor).name), ...NAMES];
  return {
    columns: columns.map((name) => ({ name, unit: "" })),
    rows: results.variants.flatMap((variant) => {
      const first = [variant.name, ...levelsOf(results, variant)];
      return results.responses.map((info) => [...first, ...figures(variant, info)]);
    }),
  };
}

function figures({ estimates, differences, day }: VariantResults, info: ResponseInfo): SheetCell[] {
  const found = estimates[info.key];
  const other = differences?.[info.key];
  const at = (value: number | null | undefined) => figureCell(value, info, day.startClockSeconds);
  const apart = (value: number | null | undefined) => spanCell(value, info);
  const isClock = info.format === "clock";
  return [
    ...[info.label, isClock ? "time of day" : info.unit, found?.n ?? 0],
    ...[at(found?.mean), at(found?.low), at(found?.high), at(found?.min), at(found?.max)],
    ...[apart(other?.mean), apart(other?.low), apart(other?.high)],
    ...[
      other === undefined ? null : isClock ? "s" : info.unit,
      other === undefined ? null : other.shown ? "yes" : "no",
    ],
  ];
}

/** A value of a result as a cell of its kind; times of day count from `startClockSeconds` after midnight. */
export function figureCell(
  value: number | null | undefined,
  { format }: Pick<ResponseInfo, "format">,
  startClockSeconds: number,
): SheetCell {
  if (value === null || value === undefined) return null;
  if (format === "clock") return { value: startClockSeconds + value, as: "clock" };
  return format === "share" ? { value, as: "share" } : value;
}

/** A difference of two values: of two times of day, seconds. */
export function spanCell(value: number | null | undefined, { format }: Pick<ResponseInfo, "format">): SheetCell {
  if (value === null || value === undefined) return null;
  return format === "share" ? { value, as: "share" } : value;
}
