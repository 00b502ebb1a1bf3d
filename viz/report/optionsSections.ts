import { formatConfidence, formatDecimals } from "../../sim/text/units/index.ts";
import type { OptionsResult, Ranged, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { observationsWords } from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { html, type Markup } from "./html.ts";
import { toldAnswer, withWelfare } from "./reportSections.ts";
import { worthChart } from "./studyCharts.ts";

/** Years; a payback beyond a lifetime is none that a bank would read. */
const LONGEST_PAYBACK = 100;

/** What suppliers' offers are worth, before the days that compare them with the plan as it is. */
export function optionsSections(found: OptionsResult, results: StudyResults, figures: Figures): Markup[] {
  return [
    toldAnswer(withWelfare(results, found.words.map(isolated)), worthChart(found), figures),
    worthSection(found, results),
  ];
}

function worthSection(found: OptionsResult, results: StudyResults): Markup {
  const { currency, interest, daysPerYear, confidence, cashWords } = found;
  const unit = isolated(currency);
  return html`<h2>Price, worth and payback</h2>
<p>Interest ${Number((interest * 100).toPrecision(3))}\u00A0% a year, ${formatDecimals(daysPerYear, 0)} days a year, money in ${unit}. Cash of a day: ${isolated(cashWords)}. Means over ${observationsWords(results)} of each on the same random numbers, with ${formatConfidence(confidence)} intervals that hold for all options at once.</p>
${priceTable(found, unit)}
${worthTable(found, unit)}`;
}

function priceTable({ options }: OptionsResult, unit: string): Markup {
  const rows = options.map(({ name, price, lifeYears, servicePerYear, cashPerDay }) => {
    const { mean, familyLow, familyHigh } = cashPerDay;
    const cash = { mean, low: familyLow ?? mean, high: familyHigh ?? mean };
    return html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th><td>${money(price)}</td><td>${formatDecimals(lifeYears, 0)}</td><td>${money(servicePerYear)}</td>${cell(cash, money)}</tr>`;
  });
  return html`<div class="scroll"><table class="even"><caption>What each option costs, and what a day with it brings more than one without it.</caption><thead><tr><th scope="col">Option</th><th scope="col">Price [${unit}]</th><th scope="col">Life [years]</th><th scope="col">Service a year [${unit}]</th><th scope="col">Cash a day [${unit}]</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function worthTable({ options }: OptionsResult, unit: string): Markup {
  const rows = options.map(
    ({ name, worth }) =>
      html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th>${cell(worth.presentValue, money)}${cell(worth.perYear, money)}${cell(worth.paybackYears, years)}${cell(worth.discountedPaybackYears, years)}</tr>`,
  );
  return html`<div class="scroll"><table class="even"><caption>What each option is worth. A year: the equal yearly amount over the life. Payback is reckoned after service, without and with interest.</caption><thead><tr><th scope="col">Option</th><th scope="col">Net present value [${unit}]</th><th scope="col">A year [${unit}]</th><th scope="col">Payback [years]</th><th scope="col">With interest [years]</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function cell({ mean, low, high }: Ranged, show: (value: number) => string): Markup {
  const range = show(low) === show(high) ? "" : html`<span class="range">${show(low)} to ${show(high)}</span>`;
  return html`<td>${show(mean)}${range}</td>`;
}

function money(value: number): string {
  return formatDecimals(Math.round(value), 0);
}

function years(value: number): string {
  return value > LONGEST_PAYBACK ? "never" : value.toFixed(1);
}
