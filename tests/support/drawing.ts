import { type ChartContext, serverDocument, svgText } from "../../viz/index.ts";
import { normalisedSvg } from "./normalisedSvg.ts";

/** A context for tests: a fresh server document, fixed colours. */
export function testContext(options: Partial<ChartContext> = {}): ChartContext {
  return { document: serverDocument(), theme: "light", idPrefix: "test", ...options };
}

/** A drawn chart as the text that is stored in tests/pictures. */
export function picture(svg: SVGSVGElement): string {
  return normalisedSvg(svgText(svg));
}

/** Contents of all text elements, in drawing order. */
export function textsOf(svg: SVGSVGElement): string[] {
  return [...svg.querySelectorAll("text")].map((text) => text.textContent ?? "");
}
