import type { Factor } from "../../asked/study/index.ts";
import { type Column, column } from "./column.ts";

/** The column of a factor's levels, of one name in every table. */
export function factorColumn({ name, path }: Factor): Column {
  const what = path === "" ? "one of its alternatives" : path;
  return column(`factor: ${name}`, "text", "", `Level of the factor in this variant; it sets ${what}.`);
}
