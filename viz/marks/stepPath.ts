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

function fixed(value: number): string {
  return String(Math.round(value * 10) / 10);
}
