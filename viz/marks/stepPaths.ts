/** Path of a step function: value `Y[i]` holds from `X[i]` to `X[i + 1]`, the last one to `end`. Pixels. Empty for no points. */
export function stepPath(X: readonly number[], Y: readonly number[], end: number): string {
  if (X.length === 0) return "";
  let path = `M${fixed(X[0]!)},${fixed(Y[0]!)}`;
  for (let i = 1; i < X.length; i++) {
    path += `H${fixed(X[i]!)}`;
    if (Y[i] !== Y[i - 1]) path += `V${fixed(Y[i]!)}`;
  }
  return `${path}H${fixed(end)}`;
}

/**
 * Closed path between two step functions over cells: cell i spans `edges[i]`..`edges[i + 1]` and `upper[i]`..`lower[i]`
 * (pixels). Cells thinner than 0.05 px are left out, so a band that comes and goes is several pieces.
 */
export function stepBandPath(edges: readonly number[], upper: readonly number[], lower: readonly number[]): string {
  let path = "";
  let from = 0;
  const solid = (cell: number) => Math.abs(lower[cell]! - upper[cell]!) > 0.05;
  while (from < upper.length) {
    if (!solid(from)) {
      from++;
      continue;
    }
    let to = from;
    while (to + 1 < upper.length && solid(to + 1)) to++;
    path += pieceOf(edges, upper, lower, from, to);
    from = to + 1;
  }
  return path;
}

function pieceOf(
  edges: readonly number[],
  upper: readonly number[],
  lower: readonly number[],
  from: number,
  to: number,
): string {
  let path = `M${fixed(edges[from]!)},${fixed(upper[from]!)}`;
  for (let cell = from; cell <= to; cell++) {
    if (cell > from && fixed(upper[cell]!) !== fixed(upper[cell - 1]!))
      path += `H${fixed(edges[cell]!)}V${fixed(upper[cell]!)}`;
  }
  path += `H${fixed(edges[to + 1]!)}V${fixed(lower[to]!)}`;
  for (let cell = to - 1; cell >= from; cell--) {
    if (fixed(lower[cell]!) !== fixed(lower[cell + 1]!)) path += `H${fixed(edges[cell + 1]!)}V${fixed(lower[cell]!)}`;
  }
  return `${path}H${fixed(edges[from]!)}Z`;
}

function fixed(value: number): string {
  return String(Math.round(value * 10) / 10);
}
