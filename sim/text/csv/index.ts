/** Tables that people write: leaf, knows nothing of what stands in them. */

export { readTable, type Table, type TableRow } from "./readTable.ts";
