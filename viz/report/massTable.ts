import { formatDecimals } from "../../sim/text/units/index.ts";
import type { MassBalance, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { html, type Markup, unsplit } from "./html.ts";

type Line = MassBalance["lines"][number];

const KINDS: Record<Line["kind"], string> = {
  "at the farm": "in",
  hung: "in",
  "from before": "there when the day began",
  carcass: "out: sold as carcass",
  "chill loss": "out: lost in the chiller",
  "by-product": "out: by-product or cut",
  "way out": "out: not sold as carcass",
  "left on the line": "still there",
  unaccounted: "rounding",
};

/** Kilograms in and out; null where results have none. */
export function massTable({ massBalance }: VariantResults): Markup | null {
  if (massBalance === undefined || massBalance === null) return null;
  const rows = massBalance.lines.map(
    (line) =>
      html`<tr><th scope="row"><bdi>${isolated(line.name)}</bdi></th><td>${KINDS[line.kind]}</td><td>${kilogramWords(line)}</td><td>${formatDecimals(100 * line.share, 1)} %</td></tr>`,
  );
  return html`<h3>Mass balance</h3>
<p>${soldWords(massBalance)}</p>
<div class="scroll"><table><caption>Carcasses, by-products and all else add up to the live weight that was hung.</caption><thead><tr><th scope="col">What</th><th scope="col">In or out</th><th scope="col">Mass</th><th scope="col">Share of live weight hung</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

/** Rounding is far below a gram. */
function kilogramWords({ kind, kilograms }: Line): string {
  if (kind === "unaccounted" && Math.abs(kilograms) < 0.001) return unsplit("under 1 g");
  return unsplit(`${formatDecimals(kilograms, kilograms < 100 ? 1 : 0)} kg`);
}

function soldWords({ presentation, publishedAs }: MassBalance): Markup {
  if (presentation === "")
    return html`The plan does not say what stays on the carcass, so its yield cannot be compared with others.`;
  const fits = publishedAs === null ? "No published definition matches it." : `That is the ${publishedAs}.`;
  return html`Sold: <bdi>${isolated(presentation)}</bdi>. ${fits} Compare its yield only with yields of the same presentation.`;
}
