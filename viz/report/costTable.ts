import { formatDecimals } from "../../sim/text/units/index.ts";
import type { CostSheet, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { html, type Markup, unsplit } from "./html.ts";

const RUNNING: [Exclude<keyof CostSheet["costs"], "processing" | "total">, string][] = [
  ["regularPay", "pay inside the shifts"],
  ["overtimePay", "overtime pay"],
  ["water", "fresh water"],
  ["wasteWater", "waste water"],
  ["energy", "electricity"],
  ["fuel", "fuel for hot water"],
  ["capital", "machines: price spread evenly over their life, no interest"],
  ["animals", "live animals"],
];

const PLANT: [Exclude<keyof NonNullable<CostSheet["plant"]>, "total">, string][] = [
  ["building", "building: price spread evenly over its life, no interest"],
  ["packaging", "packaging"],
  ["inspection", "inspection fees"],
  ["waste", "waste that has no price of its own"],
  ["overhead", "overhead"],
  ["maintenance", "maintenance"],
  ["loanInterest", "interest on the loan, average over its term"],
];

/** Costs and margin of the day, without and with what the plant itself costs; null where results have none. */
export function costTable({ costSheet: sheet }: VariantResults): Markup | null {
  if (sheet === undefined || sheet === null) return null;
  const money = (value: number | null, digits = 0) =>
    value === null ? "not counted" : unsplit(`${formatDecimals(value, digits)} ${isolated(sheet.currency)}`);
  const row = (what: string, value: number) => html`<tr><th scope="row">${what}</th><td>${money(value)}</td></tr>`;
  const running = RUNNING.filter(([key]) => sheet.costs[key] !== 0).map(([key, words]) => row(words, sheet.costs[key]));
  const { plant } = sheet;
  const ofPlant =
    plant === null ? [] : PLANT.filter(([key]) => plant[key] !== 0).map(([key, words]) => row(words, plant[key]));
  return html`<h3>Costs and margin</h3>
${plant === null ? html`<p>The plan gives no costs for building, packaging, inspection, waste, overhead, maintenance or a loan. Without them the margin is not what a plant earns.</p>` : ""}
<div class="scroll"><table><caption>Costs of the day. Machines and building are charged over their life, so only the interest on a loan is a cost.</caption><thead><tr><th scope="col">Cost</th><th scope="col">This day</th></tr></thead><tbody>${running}${ofPlant}</tbody></table></div>
<div class="scroll"><table><caption>Without and with the costs of the plant itself: building, packaging, inspection, waste, overhead, maintenance, interest.</caption><thead><tr><th scope="col">Figure</th><th scope="col">Without</th><th scope="col">With</th></tr></thead><tbody><tr><th scope="row">cost per kg of carcass, animals not included</th><td>${money(sheet.costPerKg, 3)}</td><td>${money(sheet.fullCostPerKg, 3)}</td></tr><tr><th scope="row">margin of the day</th><td>${money(sheet.margin)}</td><td>${money(sheet.fullMargin)}</td></tr></tbody></table></div>
${sheet.loanPayment === null ? "" : html`<p>The bank takes ${money(sheet.loanPayment)} a working day for interest and repayment. That money has to be there, whatever the margin.</p>`}`;
}
