/** A p-value for people: "p = 0.023", "p < 0.001" below that. */
export function formatP(p: number): string {
  return p < 0.001 ? "p < 0.001" : `p = ${Number(p.toPrecision(2))}`;
}
