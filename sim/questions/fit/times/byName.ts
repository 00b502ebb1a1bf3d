import { type Fault, listWords, nearestWords } from "../../../asked/plan/index.ts";
import type { Table } from "../../../text/csv/index.ts";
import type { RawColumn } from "./rawColumn.ts";

const UNIT = /[([][^()[\]]*[)\]]\s*$/u;

/**
 * Splits a table whose rows say in one column what they are of into a column for each name: its heading is the name with
 * the unit of the column of times, of which there may be one only.
 */
export function byName({ headings, rows }: Table, by: string): { columns: RawColumn[]; faults: Fault[] } {
  const at = headings.indexOf(by);
  if (at === -1) {
    const remedy = nearestWords(by, headings, "take a heading of the file's first row");
    return {
      columns: [],
      faults: [{ path: "--by", found: `'${by}' is no column`, allowed: listWords(headings), remedy }],
    };
  }
  const timed = headings.map((_, index) => index).filter((index) => index !== at && UNIT.test(headings[index]!));
  const [value] = timed;
  if (value === undefined || timed.length > 1) {
    const found = value === undefined ? "no column has a unit in its heading" : `${timed.length} columns have a unit`;
    const allowed = 'one column of times, its heading with a unit, such as "time (s)"';
    return { columns: [], faults: [{ path: "", found, allowed, remedy: "rename or delete columns" }] };
  }
  const unit = UNIT.exec(headings[value]!)![0];
  const columns = new Map<string, RawColumn>();
  const faults: Fault[] = [];
  for (const { line, cells } of rows) {
    const [name, text] = [cells[at] ?? "", cells[value] ?? ""];
    if (text === "") continue;
    if (name === "") {
      faults.push({ path: `line ${line}`, found: `a time without "${by}"`, allowed: "", remedy: "say what it is of" });
      continue;
    }
    const column = columns.get(name) ?? { heading: `${name} ${unit}`, cells: [] };
    column.cells.push({ line, text });
    columns.set(name, column);
  }
  return { columns: [...columns.values()], faults };
}
