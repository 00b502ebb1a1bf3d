/**
 * A picture as it is stored for comparison: one element a line, numbers in attributes to one decimal, so that a diff can
 * be read. Texts stay as they are.
 */
export function normalisedSvg(svg: string): string {
  const rounded = svg.replace(/<[^>]+>/g, (tag) =>
    tag.replace(/-?\d+\.\d+/g, (number) => String(Math.round(Number(number) * 10) / 10)),
  );
  return `${rounded.replace(/></g, ">\n<")}\n`;
}
