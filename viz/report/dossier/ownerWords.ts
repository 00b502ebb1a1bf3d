import { formatClock, formatDecimals, formatNumber } from "../../../sim/text/units/index.ts";
import type { Dossier, KindTold, OwnerRow } from "../../contract.ts";
import { isolated } from "../../frame/index.ts";
import { RANGE_WORDS, shownKind } from "./tables.ts";

/** A risk with its size and what to do about it. */
export interface Risk {
  what: string;
  size: string;
  remedy: string;
}

/** "4.8 million EUR", "420,000 EUR": money that an owner reads at a glance. */
export function moneyWords(value: number, currency: string): string {
  const million = Math.abs(value) >= 1e6;
  return million
    ? `${formatDecimals(value / 1e6, 1)} million ${currency}`
    : `${formatDecimals(value, Math.abs(value) >= 1e4 ? -3 : 0)} ${currency}`;
}

/** The answer in one sentence. */
export function verdictWords({ kinds, choice, currency }: Dossier): string {
  if (choice.row === null) return "Build none of these kinds of plant as they stand: each has something against it.";
  const { row } = kinds[choice.row]!;
  if (row.value !== null && row.value.mean < 0)
    return `Do not build at these prices: even the best kind, ${isolated(row.name)}, loses ${moneyWords(-row.value.mean, currency!)}.`;
  if (row.loss !== null && row.loss >= MANY_LOSSES)
    return `Hardly: the best kind, ${isolated(row.name)}, loses money in ${percent(row.loss)} of the imagined worlds.`;
  return `Build: ${isolated(row.name)}.`;
}

/** Worlds in which money is lost, from which on nobody should be told to build (our own rule, no source). */
const MANY_LOSSES = 0.25;

/** The reason, in one sentence. */
export function reasonWords(dossier: Dossier): string {
  const { kinds, choice, currency } = dossier;
  if (choice.row === null) {
    const all = kinds.map(({ row }) => `${isolated(row.name)}: ${row.obstacles.join(", ")}`);
    return `${all.slice(0, MAX_TOLD).join("; ")}${all.length > MAX_TOLD ? "; and so on" : ""}.`;
  }
  const { row } = kinds[choice.row]!;
  const among =
    kinds.length === 1 ? "It" : `Of ${kinds.length} kinds that were compared on the same simulated days, it`;
  const kept = "keeps the time limits as well as any, fits the site as far as that is known,";
  if (choice.by === "value") {
    const { mean, low, high } = row.value!;
    return `${among} ${kept} and is worth most over the years looked at: ${moneyWords(mean, currency!)} (${moneyWords(low, currency!)} to ${moneyWords(high, currency!)}), best of all in ${percent(row.best!)} of ${formatDecimals(dossier.worlds, 0)} imagined worlds.`;
  }
  if (choice.by === "cost")
    return `${among} ${kept} and makes a kilogram cheapest: ${formatDecimals(row.costPerKg!.mean, 2)} ${currency}${row.capital === null ? ", what is bought not counted, since prices are missing" : ""}.`;
  return `${among} ${kept} and takes the fewest people: ${row.people * row.shifts} a day. Money is open, since the demand names no prices.`;
}

const MAX_TOLD = 4;

/** What an owner has to know beside it. */
export function ownerSentences(dossier: Dossier): string[] {
  const { kinds, choice, currency } = dossier;
  const told = shownKind(dossier);
  const { row, kind, money, trial } = told;
  const { rate } = kind.design;
  const { looked, sizedFor } = kind.demand.years;
  const rivals = choice.rivals.map((at) => kinds[at]!.row);
  return [
    `It hangs ${formatDecimals(rate.headsPerSecond * 3600, 0)} heads an hour, ${formatDecimals(rate.headsPerDay, 0)} on the busiest day${kind.demand.markets.length > 0 ? ` of year ${sizedFor}, spare rate included` : ""}, with ${row.people} people in ${row.shifts === 1 ? "the shift" : `each of ${row.shifts} shifts`} and ${row.employed} on the books. In ${dossier.days} simulated days work ended at ${formatClock(trial.finish.mean)} on average.`,
    row.capital === null
      ? `What it costs to buy is open: ${row.open.length} ${row.open.length === 1 ? "price is" : "prices are"} missing (${row.open.slice(0, MAX_TOLD).join(", ")}${row.open.length > MAX_TOLD ? ", ..." : ""}).`
      : `It costs ${moneyWords(row.capital, currency!)} to buy, with the ${sourced(kind.demand)}.`,
    ...(row.costPerKg === null
      ? []
      : [
          `A kilogram of carcass costs ${formatDecimals(row.costPerKg.mean, 2)} ${currency} to make (${formatDecimals(row.costPerKg.low, 2)} to ${formatDecimals(row.costPerKg.high, 2)}), animals not included.`,
        ]),
    ...breakEvenWords(told, rate.headsPerDay),
    row.yearsUntilTooSmall === null
      ? `It is large enough for all of the ${looked} years looked at.`
      : `It is too small after ${row.yearsUntilTooSmall} ${row.yearsUntilTooSmall === 1 ? "year" : "years"}: from then on the busiest day does not fit into the shifts.`,
    ...(rivals.length > 0 ? [`May be as good: ${rivals.map(rivalWords).join("; ")}.`] : []),
    ...hinderedWords(dossier),
    ...(money === null ? ["The demand names no money: add pay and money, and the dossier reckons costs."] : []),
  ];
}

/** What would have to change for a better kind. */
function hinderedWords({ kinds, choice, currency }: Dossier): string[] {
  if (choice.hindered === null || choice.row === null) return [];
  const [better, built] = [kinds[choice.hindered]!.row, kinds[choice.row]!.row];
  const more =
    choice.by === "value"
      ? `worth ${moneyWords(better.value!.mean - built.value!.mean, currency!)} more`
      : `${formatDecimals(built.costPerKg!.mean - better.costPerKg!.mean, 2)} ${currency}/kg cheaper`;
  return [
    `${isolated(better.name)} would be ${more}, but for this: ${isolated(better.obstacles.join("; "))}. Ask what it takes to change that.`,
  ];
}

function sourced({ capital }: KindTold["kind"]["demand"]): string {
  return capital === null ? "" : "prices that the demand gives";
}

function breakEvenWords({ money }: KindTold, headsPerDay: number): string[] {
  const heads = money?.breakEvenHeads ?? null;
  if (heads === null) return [];
  if (!Number.isFinite(heads)) return ["No number of heads pays what is fixed: a head costs more than it brings."];
  const share = heads / headsPerDay;
  return [
    `It pays its way from ${formatDecimals(Math.ceil(heads), 0)} heads a day on, ${percent(share)} of the busiest day.`,
  ];
}

function rivalWords({ name, best }: OwnerRow): string {
  return best === null ? isolated(name) : `${isolated(name)} (best in ${percent(best)} of the worlds)`;
}

const percent = (share: number): string => `${formatNumber(100 * share, share < 0.1 ? 1 : 2)} %`;

/** The answer for the terminal: verdict, reason, what to know. */
export function ownerLines(dossier: Dossier): { verdict: string; words: string[]; next: string[] } {
  return {
    verdict: verdictWords(dossier),
    words: [reasonWords(dossier), ...ownerSentences(dossier)],
    next: nextSteps(dossier),
  };
}

/** What could go wrong, the largest money first, then animals, people and what nobody knows. */
export function risks(dossier: Dossier): Risk[] {
  const told = shownKind(dossier);
  const { row, money, ramp, trial } = told;
  const { currency, figures } = dossier;
  const invented = figures.filter(({ source }) => source === "invented").length;
  const broken = trial.limits.filter(({ outside }) => outside > 0);
  const [widest] = money?.swings ?? [];
  const slow = ramp.filter(({ share }) => share < 1);
  return [
    ...(widest === undefined || money!.swingOf !== "value"
      ? []
      : [
          {
            what: `${RANGE_WORDS[widest.key]![0]!.toUpperCase()}${RANGE_WORDS[widest.key]!.slice(1)} is not what was taken`,
            size: `worth ${moneyWords(Math.min(widest.atLow, widest.atHigh), currency!)} to ${moneyWords(Math.max(widest.atLow, widest.atHigh), currency!)} within ${percent(widest.range)} of it`,
            remedy: "Agree on it for years ahead before steel is ordered.",
          },
        ]),
    ...(row.loss === null || row.loss === 0
      ? []
      : [
          {
            what: "The plant never earns its price",
            size: `in ${percent(row.loss)} of the imagined worlds`,
            remedy: "Build in steps, or keep the loan below what the worst years pay.",
          },
        ]),
    ...(money?.standstillWeek == null
      ? []
      : [
          {
            what: "The plant stands for a week",
            size: `${moneyWords(money.standstillWeek, currency!)} and ${formatDecimals(told.kind.design.rate.headsPerWeek, 0)} animals without a place`,
            remedy: "Agree with another plant who takes the animals; keep the parts of the annex in stock.",
          },
        ]),
    broken.length === 0
      ? {
          what: "Stunned heads wait, or carcasses stay warm",
          size: `none outside a limit in ${trial.days} simulated days; that is no proof`,
          remedy: "Measure from the first day; the official veterinarian decides.",
        }
      : {
          what: "Heads outside a time limit",
          size: broken.map(({ name, outside }) => `${name}: ${percent(outside)}`).join(", "),
          remedy: "Do not build before that is put right: gambrel why with the plan tries what helps.",
        },
    ...(row.spare.mean < 0.05
      ? [
          {
            what: "No reserve for a day that goes wrong",
            size: `spare rate ${percent(row.spare.mean)}`,
            remedy: "Raise years.spare, or line.availability if it was measured.",
          },
        ]
      : []),
    ...(slow.length === 0
      ? []
      : [
          {
            what: "People learn more slowly than taken",
            size: `${slow.length} ${slow.length === 1 ? "week" : "weeks"} below the rated speed, the first at ${percent(slow[0]!.share)}`,
            remedy: "Begin with fewer animals than ordered; train relief first; never hurry handling or stunning.",
          },
        ]),
    {
      what: "Figures that nobody measured",
      size: `${invented} of ${figures.length} figures are invented`,
      remedy: "Replace those of the fullest posts first: the list of the first month says how many to time.",
    },
  ];
}

/** What to do next. */
export function nextSteps(dossier: Dossier): string[] {
  const { row } = shownKind(dossier);
  return [
    ...(row.open.length > 0
      ? [`Ask for the missing prices: ${row.open.slice(0, 6).join(", ")}${row.open.length > 6 ? ", ..." : ""}.`]
      : []),
    "Show the annex for the veterinarian to the official veterinarian, that for the builder to licensed planners, before anything is ordered.",
    "Run the plan: gambrel page, gambrel why and gambrel try with the files in plans/.",
    "Replace invented figures, then run gambrel size again with the same command.",
  ];
}
