/** Those of the rows that belong to one owner: `rows[from[owner]]` up to the next owner's first. */
export function rowsOf(rows: Int32Array, from: Int32Array, owner: number): Int32Array {
  return rows.subarray(from[owner]!, from[owner + 1]!);
}
