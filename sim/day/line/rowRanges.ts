/** Row ranges of consecutive groups: group i has rows from[i] .. from[i + 1]. */
export function rowRanges(lengths: number[]): Int32Array {
  const from = new Int32Array(lengths.length + 1);
  lengths.forEach((length, index) => {
    from[index + 1] = from[index]! + length;
  });
  return from;
}
