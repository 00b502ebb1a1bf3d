import { dsvFormat } from "d3-dsv";

/** A table as a person wrote it: text throughout, spaces around cells taken off. */
export interface Table {
  headings: string[];
  /** Rows below the headings with something in them. */
  rows: TableRow[];
}

/** `line` counts as a text editor does, the headings being line 1 of a file that begins with them. */
export interface TableRow {
  line: number;
  /** As many as the row has, fewer or more than there are headings. */
  cells: string[];
}

/**
 * Splits a table (RFC 4180, any line end, a byte order mark allowed) whose first row holds the headings. Cells are
 * separated by commas; by semicolons or else tabs when the heading line holds no comma but one of these. Empty rows are
 * passed over. An empty text has no headings.
 */
export function readTable(text: string): Table {
  const plain = text.replace(/^\uFEFF/u, "");
  const [head, ...rows] = filledRows(plain);
  return { headings: head?.cells ?? [], rows };
}

function filledRows(text: string): TableRow[] {
  let line = 1;
  const rows: TableRow[] = [];
  for (const raw of dsvFormat(separatorOf(text)).parseRows(text)) {
    const cells = raw.map((cell) => cell.trim());
    if (cells.some((cell) => cell !== "")) rows.push({ line, cells });
    // A quoted cell can hold line breaks of its own.
    line += 1 + raw.reduce((breaks, cell) => breaks + (cell.match(/\r\n|[\r\n]/gu)?.length ?? 0), 0);
  }
  return rows;
}

function separatorOf(text: string): string {
  const headings = /[^\r\n]+/u.exec(text)?.[0] ?? "";
  if (headings.includes(",")) return ",";
  return [";", "\t"].find((separator) => headings.includes(separator)) ?? ",";
}
