import { formatConfidence, formatDecimals, intervalDecimals } from "../../sim/text/units/index.ts";
import type { OptionsResult, Ranged, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { observationsWords, offersTable } from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { firstPages } from "./firstPages.ts";
import { html, type Markup } from "./html.ts";
import { withWelfare } from "./reportSections.ts";
import { worthChart } from "./studyCharts.ts";

/** Years; a payback beyond a lifetime is none that a bank would read. */
const LONGEST_PAYBACK = 100;

/** What suppliers' offers are worth, before the days that compare them with today's plan. */
export function optionsSections(found: OptionsResult, results: StudyResults, figures: Figures): Markup[] {
  return [
    firstPages(
      {
        verdict: isolated(found.verdict),
        words: withWelfare(results, found.words.map(isolated)),
        table: offersTable(found, results.decision, results.variants[0]!.day.startClockSeconds),
        note: `Each offer bought alone, over the same ${observationsWords(results)}, with ${formatConfidence(found.confidence)} ranges of money that hold for all offers at once. Benefit a year: after price, service and interest. Grey: no difference to today's plan shown.`,
        picture: worthChart(found),
        next: found.next.map(isolated),
      },
      figures,
    ),
    worthSection(found, results),
  ];
}

function worthSection(found: OptionsResult, results: StudyResults): Markup {
  const { currency, interest, daysPerYear, confidence, cashWords } = found;
  const unit = isolated(currency);
  return html`<h2>Price, benefit and payback</h2>
<p>Interest ${Number((interest * 100).toPrecision(3))}\u00A0% a year, ${formatDecimals(daysPerYear, 0)} days a year, money in ${unit}. Cash of a day: ${isolated(cashWords)}. Means over the same ${observationsWords(results)} of each option, with ${formatConfidence(confidence)} intervals, sure even though all options were compared.</p>
${priceTable(found, unit)}
${worthTable(found, unit)}`;
}

function priceTable({ options }: OptionsResult, unit: string): Markup {
  const rows = options.map(({ name, price, lifeYears, servicePerYear, cashPerDay }) => {
    const { mean, familyLow, familyHigh } = cashPerDay;
    const cash = { mean, low: familyLow ?? mean, high: familyHigh ?? mean };
    return html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th><td>${money(price)}</td><td>${formatDecimals(lifeYears, 0)}</td><td>${money(servicePerYear)}</td>${cell(cash, money)}</tr>`;
  });
  return html`<div class="scroll"><table class="even"><caption>What each option costs, and how much more money a day with it brings.</caption><thead><tr><th scope="col">Option</th><th scope="col">Price [${unit}]</th><th scope="col">Life [years]</th><th scope="col">Service a year [${unit}]</th><th scope="col">Cash a day [${unit}]</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function worthTable({ options }: OptionsResult, unit: string): Markup {
  const rows = options.map(
    ({ name, worth }) =>
      html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th>${cell(worth.presentValue, money)}${cell(worth.perYear, money)}${cell(worth.paybackYears, years)}${cell(worth.discountedPaybackYears, years)}</tr>`,
  );
  return html`<div class="scroll"><table class="even"><caption>What each option is worth. Average yearly benefit: after price, service and interest, over the life of the purchase. Payback counts service, first without and then with interest.</caption><thead><tr><th scope="col">Option</th><th scope="col">Net present value [${unit}]</th><th scope="col">Average yearly benefit [${unit}]</th><th scope="col">Payback [years]</th><th scope="col">With interest [years]</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

/** A figure with its range; `show` takes the half-width as well, which sets the digits. */
function cell({ mean, low, high }: Ranged, show: (value: number, halfWidth: number) => string): Markup {
  const [middle, from, to] = [mean, low, high].map((value) => show(value, (high - low) / 2));
  return html`<td>${middle!}${from === to ? "" : html`<span class="range">${from!} to ${to!}</span>`}</td>`;
}

function money(value: number, halfWidth = 0): string {
  return formatDecimals(value, halfWidth > 0 ? Math.min(0, intervalDecimals(halfWidth)) : 0);
}

function years(value: number): string {
  return value > LONGEST_PAYBACK ? "never" : value.toFixed(1);
}
