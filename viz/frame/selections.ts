import type { Selection } from "d3";

export type Svg = Selection<SVGSVGElement, unknown, null, undefined>;
export type Group = Selection<SVGGElement, unknown, null, undefined>;
export type Defs = Selection<SVGDefsElement, unknown, null, undefined>;
