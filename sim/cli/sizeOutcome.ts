import type { ResponseInfo, StudyResults } from "../days/results/index.ts";
import type { PlantDesign } from "../questions/size/index.ts";
import {
  capital,
  formatClock,
  formatConfidence,
  formatDuration,
  formatEstimate,
  formatNumber,
  formatRate,
  formatResponse,
  formatShare,
  textTable,
} from "../text/units/index.ts";
import { counted } from "./terminal.ts";

const MINUTE = 60;

/** The answer in a few sentences: what was sized, whether it does, and what fewer people would cost. */
export function answerLines(designs: readonly PlantDesign[], results: StudyResults): string[] {
  const { alternative, people, needed } = designs[0]!;
  const by = formatClock(needed.byClockSeconds);
  const days = results.study.replications;
  const end = endOf(0, results);
  const late = end - needed.byClockSeconds;
  const doing =
    late <= 0
      ? `ends work at ${formatClock(end)}, before the shift does at ${by}`
      : `ends work at ${formatClock(end)}, ${minutes(late)} after the shift`;
  return [
    `${capital(alternative)}: ${counted(people, "person", "people")} in each shift; in ${counted(days, "simulated day")} it ${doing}, on average.`,
    ...fewerPeople(designs, results),
    ...brokenLimits(designs, results),
  ];
}

/** The kind of plant with the fewest people, where that is not the one sized. */
function fewerPeople(designs: readonly PlantDesign[], results: StudyResults): string[] {
  const fewest = designs.reduce((least, design) => (design.people < least.people ? design : least));
  const at = designs.indexOf(fewest);
  if (at === 0) return ["No other kind of plant takes fewer people."];
  const later = endOf(at, results) - endOf(0, results);
  const when =
    Math.abs(later) < MINUTE / 2
      ? "at the same time"
      : `${minutes(Math.abs(later))} ${later > 0 ? "later" : "earlier"}`;
  const busiest = fewest.crews.reduce((most, crew) => (crew.load > most.load ? crew : most));
  return [
    `${capital(fewest.alternative)}: ${counted(fewest.people, "person", "people")}, ${designs[0]!.people - fewest.people} fewer, end ${when}; the busiest, ${busiest.name}, is at a load of ${formatShare(busiest.load)}.`,
  ];
}

/** Animals first: which plan leaves heads outside a limit. */
function brokenLimits(designs: readonly PlantDesign[], results: StudyResults): string[] {
  const broken = designs.flatMap(({ alternative }, at) =>
    limitsOf(results).flatMap(({ key, label }) => {
      const share = results.variants[at]!.estimates[key]?.mean ?? 0;
      return share > 0 ? [`${capital(alternative)}: ${label}: ${formatShare(share)}.`] : [];
    }),
  );
  return broken.length === 0 ? ["No head was outside a time limit in these days."] : broken;
}

/** Each kind of plant in a row, simulated on the same days. */
export function sideBySide(designs: readonly PlantDesign[], results: StudyResults): string[] {
  const limits = limitsOf(results);
  const rows = designs.map((design, at) => {
    const { estimates } = results.variants[at]!;
    const fullest = Math.max(...design.crews.map(({ load }) => load));
    return [
      design.alternative,
      String(design.people),
      String(design.crews.length),
      formatShare(fullest),
      formatNumber(estimates.headsPerHour?.mean ?? 0, 4),
      formatClock(endOf(at, results)),
      formatDuration(Math.round(estimates.overtime?.mean ?? 0)),
      formatNumber(estimates.carcassesPerPersonHour?.mean ?? 0),
      formatNumber(design.utilities.litresPerDay / 1000),
      formatNumber(design.utilities.kilowatts),
      ...limits.map(({ key }) => formatShare(estimates[key]?.mean ?? 0)),
    ];
  });
  const heads = ["", "people", "crews", "highest load", "carcasses/h", "work ends", "overtime", "carcasses/person h"];
  const { needed } = designs[0]!;
  return [
    ...textTable([
      [...heads, "water m3", "power kW", ...limits.map(({ label }) => label.replace(": heads outside the limit", ""))],
      ...rows,
    ]),
    `Needed: ${formatNumber(needed.carcassesPerHour, 4)} carcasses/h from the start of the first shift to the end of the last, ${formatClock(needed.byClockSeconds)}. Last columns: heads outside the limit.`,
    "Compact: posts take in neighbouring steps of one hygiene zone. Fewest people: such posts without a reserve for stops of the line.",
    'gambrel size DEMAND --alternative NAME --out FILE writes the plan of any of them, and "alternative" in the demand chooses one.',
  ];
}

/** Needed, estimated and simulated by the same definitions; then the line by itself, breaks left out of both. */
export function outcomeLines({ estimate, rate, needed, plan, crates }: PlantDesign, results: StudyResults): string[] {
  const { estimates, day, values } = results.variants[0]!;
  const percent = formatConfidence(results.study.confidence);
  const startClock = day.startClockSeconds;
  const asked: Record<string, number> = {
    headsPerHour: needed.carcassesPerHour,
    finish: needed.byClockSeconds - startClock,
  };
  const guessed: Record<string, number> = { headsPerHour: estimate.headsPerHour, finish: estimate.workFinishSeconds };
  const rows = [...shownOf(results), ...limitsOf(results)].map((info) => {
    const words = (value: number | undefined): string =>
      value === undefined ? "" : formatResponse(value, info, startClock);
    const found = estimates[info.key];
    const [mean, range] = found === undefined ? ["no value", ""] : formatEstimate(found, info, startClock);
    return [info.label, words(asked[info.key]), words(guessed[info.key]), mean, range === "" ? "" : `(${range})`];
  });
  const late = (values.overtime ?? []).filter((seconds) => seconds !== null && seconds > 0).length;
  const hung = [
    "Heads hung while hanging goes on, breaks left out",
    formatRate(rate.headsPerSecond),
    formatRate(estimate.line.headsPerSecond),
  ];
  return [
    ...textTable([
      ["", "needed", "estimate", "simulated", `${percent} interval, ${results.study.replications} days`],
      ...rows,
    ]),
    ...textTable([["", "needed", "estimate"], hung]),
    `Narrowest by itself: ${estimate.line.ceilings[0]?.what ?? "-"}. In the estimate a pooled post walks for every head. The loads bring ${counted(crates.heads - rate.headsPerDay, "head")} more than the day asks for.`,
    `${late} of ${results.study.replications} simulated days ran into overtime, cleaning included.`,
    ...(Array.isArray(plan.gates) && plan.gates.length > 0
      ? [
          "The plan stuns a head only when it can be stuck and bled at once, and empties that stretch before every break.",
        ]
      : []),
  ];
}

const SHOWN = ["headsPerHour", "finish", "overtime"];

function shownOf({ responses }: StudyResults): ResponseInfo[] {
  return responses.filter(({ key }) => SHOWN.includes(key));
}

function limitsOf({ responses }: StudyResults): ResponseInfo[] {
  return responses.filter(({ key }) => key.startsWith("beyond."));
}

/** Mean end of work of a variant, seconds of the clock. */
function endOf(variant: number, { variants }: StudyResults): number {
  const { estimates, day } = variants[variant]!;
  return day.startClockSeconds + (estimates.finish?.mean ?? 0);
}

function minutes(seconds: number): string {
  return `${Math.max(1, Math.round(seconds / MINUTE))} min`;
}
