import type { StudyResults, VariantResults } from "../contract.ts";
import { isSingleDay } from "../words/index.ts";
import { costTable } from "./costTable.ts";
import { html, type Markup } from "./html.ts";
import { massTable } from "./massTable.ts";
import { utilityTable } from "./utilityTable.ts";

/** What went through the plant on the first day of the base case: kilograms, water, energy, money. Null where the plan tells nothing of it. */
export function plantSection(results: StudyResults): Markup | null {
  const base = results.variants[0]!;
  const tables = [massTable(base), utilityTable(base), costTable(base)].filter((table) => table !== null);
  if (tables.length === 0) return null;
  return html`<h2>What goes through the plant</h2>
<p class="small">Figures of one simulated day, day ${base.day.replication + 1}${dayOf(results, base)}.${isSingleDay(results) ? "" : " Means over all days stand under Results, as far as they were asked for."}</p>
${tables}`;
}

function dayOf({ variants }: StudyResults, { name }: VariantResults): string {
  return variants.length > 1 ? ` of \u2018${name}\u2019` : "";
}
