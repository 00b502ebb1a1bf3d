const MOST_LINES = 200;
const LONGEST = 1000;

/** Faults as they are shown: a file can hold more of them, and longer names in them, than anybody reads. */
export function shownLines(lines: readonly string[]): string[] {
  const shown = lines.slice(0, MOST_LINES).map(shortened);
  const more = lines.length - shown.length;
  return more === 0 ? shown : [...shown, `... and ${more} more; mend these first.`];
}

function shortened(line: string): string {
  return line.length <= LONGEST ? line : `${line.slice(0, LONGEST)}...`;
}
