import { type RailLayout, SIZE } from "./layout.ts";

/** Stage drawn at a point of the picture, -1 for none; a station on a chain before its chain. */
export function stageUnder(layout: RailLayout, x: number, y: number): number {
  let found = -1;
  for (const place of layout.stages) {
    if (place === null) continue;
    const row = layout.rows[place.row]!;
    const top = row.y + (place.look === "siding" ? SIZE.sidingDrop * layout.scale : 0);
    const height = SIZE.row * layout.scale;
    const inside = x >= place.cell.from && x <= place.cell.to && y >= top && y <= top + height;
    if (inside) found = place.stage;
  }
  return found;
}
