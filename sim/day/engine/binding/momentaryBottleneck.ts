import type { ActivePeriodColumns } from "./activePeriods.ts";

/**
 * The momentary bottleneck by longest active period (Roser, Nakano and Tanaka 2002, A practical bottleneck detection
 * method, Proc. Winter Simulation Conference; definition from memory): at any instant the position whose active period is
 * the longest of those under way; where the active periods of one bottleneck and the next overlap, it is shifting.
 *
 * Calls for each stretch of time, in order, with the positions between which the bottleneck shifts; a single one is the
 * sole bottleneck. The array is used again for the next call. `periods`: rising starts and rising ends.
 */
export function momentaryBottleneck(
  periods: ActivePeriodColumns,
  call: (from: number, to: number, positions: readonly number[]) => void,
): void {
  const longest = everLongest(periods);
  const positions: number[] = [];
  forEachStretch(longest, (from, to, first, end) => {
    positions.length = 0;
    for (let row = first; row < end; row++) {
      if (!positions.includes(longest.position[row]!)) positions.push(longest.position[row]!);
    }
    call(from, to, positions);
  });
}

function everLongest(periods: ActivePeriodColumns): ActivePeriodColumns {
  const { from, to } = periods;
  const chosen = new Uint8Array(from.length);
  forEachStretch(periods, (_from, _to, first, end) => {
    let best = first;
    for (let row = first + 1; row < end; row++) if (to[row]! - from[row]! > to[best]! - from[best]!) best = row;
    chosen[best] = 1;
  });
  const only = (column: number[]) => column.filter((_, row) => chosen[row]);
  return { position: only(periods.position), from: only(from), to: only(to) };
}

/** Calls for each stretch between two starts or ends in which the rows `first` to before `end` are under way. */
function forEachStretch(
  periods: ActivePeriodColumns,
  call: (from: number, to: number, first: number, end: number) => void,
): void {
  const { from, to } = periods;
  const count = from.length;
  let first = 0;
  let end = 0;
  let time = -Infinity;
  while (first < count) {
    const next = end < count ? Math.min(from[end]!, to[first]!) : to[first]!;
    if (end > first && next > time) call(time, next, first, end);
    time = next;
    while (end < count && from[end]! <= time) end++;
    while (first < end && to[first]! <= time) first++;
  }
}
