/** A picture as it is stored for comparison: one element a line, numbers to one decimal, so that a diff can be read. */
export function normalisedSvg(svg: string): string {
  const rounded = svg.replace(/-?\d+\.\d+/g, (number) => String(Math.round(Number(number) * 10) / 10));
  return `${rounded.replace(/></g, ">\n<")}\n`;
}
