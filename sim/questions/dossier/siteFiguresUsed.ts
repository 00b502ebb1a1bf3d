import { type Plan, SITE_FIGURES, type SiteFigureInfo, type SiteKey, siteFigure } from "../../asked/plan/index.ts";
import { formatQuantity } from "../../text/units/index.ts";
import type { SiteFigureUsed } from "./layout.ts";

/** Every figure about the building and its services that a layout and its connections rest on, and where it comes from. */
export function siteFiguresUsed(plan: Plan): SiteFigureUsed[] {
  return Object.entries(SITE_FIGURES).map(([key, info]) => {
    const { what, usual, source, note, family } = info as SiteFigureInfo;
    const isGiven = plan.site?.given[key as SiteKey] !== undefined;
    const value = isGiven ? written(family, siteFigure(plan, key as SiteKey)) : String(usual);
    return { key, what, value, source: isGiven ? "given" : source, note: isGiven ? "" : note };
  });
}

function written(family: SiteFigureInfo["family"], value: number): string {
  if (family === "number") return String(value);
  return family === "share" ? `${Number((100 * value).toPrecision(4))} %` : formatQuantity(family, value);
}
