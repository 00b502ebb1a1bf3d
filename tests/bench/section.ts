/** One table of the benchmark. */
export interface Section {
  title: string;
  /** First row: headings. */
  rows: string[][];
  /** The same in numbers, by name; names end in their unit. */
  figures: Record<string, number>;
}

/** Three significant digits, no exponent. */
export function shown(value: number): string {
  if (!Number.isFinite(value)) return "-";
  return value >= 100 ? Math.round(value).toString() : Number(value.toPrecision(3)).toString();
}
