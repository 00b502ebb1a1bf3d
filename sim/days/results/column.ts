/** What stands in a column of a table. */
export interface Column {
  name: string;
  type: "text" | "number" | "whole number" | "yes or no" | "date-time";
  /** "" where there is none; "as the column unit says" where it changes from row to row. */
  unit: string;
  description: string;
}

/** One row's worth of a description: name, type, unit, description. */
export function column(name: string, type: Column["type"], unit: string, description: string): Column {
  return { name, type, unit, description };
}

export const UNIT_OF_ROW = "as the column unit says";

/** Of a difference or a spread: that of a time of day is a length of time. */
export const UNIT_OF_SPAN = "as the column unit says; s for a time of day";

export const RESPONSE_COLUMN = column("response", "text", "", "Key of the result; the dictionary lists them all.");
export const UNIT_COLUMN = column("unit", "text", "", "Unit of the values in this row.");
export const VARIANT_COLUMN = column(
  "variant",
  "text",
  "",
  "Name of the variant; the first one is today's plan (the base).",
);
