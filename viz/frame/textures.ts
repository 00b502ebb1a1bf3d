import type { Defs } from "./selections.ts";

/** Textures by name; each is told from the others in one colour at 4 px width. */
export type Texture = "plain" | "rising" | "falling" | "dots" | "level" | "upright" | "cross";

const TILE = 6;
const STROKES: Record<Texture, string> = {
  plain: "",
  rising: `M-1.5,1.5l3,-3M0,${TILE}l${TILE},-${TILE}M${TILE - 1.5},${TILE + 1.5}l3,-3`,
  falling: `M-1.5,${TILE - 1.5}l3,3M0,0l${TILE},${TILE}M${TILE - 1.5},-1.5l3,3`,
  dots: "M1.5,1.5h0.01M4.5,4.5h0.01",
  level: `M0,1.5h${TILE}M0,4.5h${TILE}`,
  upright: `M1.5,0v${TILE}M4.5,0v${TILE}`,
  cross: `M0,0l${TILE},${TILE}M0,${TILE}l${TILE},-${TILE}`,
};

/** Adds a tile of `texture` drawn in `ink` on `background` and returns the fill that uses it. */
export function textureFill(defs: Defs, id: string, texture: Texture, background: string, ink: string): string {
  const tile = defs
    .append("pattern")
    .attr("id", id)
    .attr("width", TILE)
    .attr("height", TILE)
    .attr("patternUnits", "userSpaceOnUse");
  tile.append("rect").attr("width", TILE).attr("height", TILE).attr("fill", background);
  if (texture !== "plain") {
    tile
      .append("path")
      .attr("d", STROKES[texture])
      .attr("fill", "none")
      .attr("stroke", ink)
      .attr("stroke-width", texture === "dots" ? 1.5 : 0.9)
      .attr("stroke-linecap", texture === "dots" ? "round" : "butt");
  }
  return `url(#${id})`;
}
