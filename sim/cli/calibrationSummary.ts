import type { Calibration, ComparedQuantity, Explanation } from "../calibrate/index.ts";
import { formatRange, formatResponse, formatSpan } from "../observations/index.ts";
import { formatDuration, formatNumber } from "../units/index.ts";
import type { Style } from "./terminal.ts";
import { textTable } from "./textTable.ts";

interface Line {
  line: string;
  style: Style;
}

/** A calibration as lines of text: what was compared, where the plan differs, which figures would explain it. */
export function calibrationSummary(calibration: Calibration & { plan: string; passedOver: string[] }): Line[] {
  const { plan, observedDays, days, confidence, quantities, countedAt, passedOver } = calibration;
  const percent = `${formatNumber(100 * confidence)} %`;
  const rows = quantities.map((quantity) => rowOf(quantity, calibration.startClockSeconds));
  const counts = quantities.some(({ stretch }) => stretch !== null)
    ? ` Heads are counted at the end of ${countedAt}.`
    : "";
  return [
    { line: plan, style: "bold" },
    plain(`${observedDays} observed against ${days} simulated days.${counts}`),
    ...textTable([["", "observed", "simulated", "observed less simulated", ""], ...rows]).map(plain),
    plain(
      `All ${quantities.length} intervals of the differences hold at once with ${percent} (Bonferroni): a plan without fault is found to differ anywhere with probability ${formatNumber(1 - confidence)} at most.`,
    ),
    ...(observedDays === 1 ? [plain("One observed day: its spread is taken from the simulated ones.")] : []),
    ...(passedOver.length > 0
      ? [plain(`Passed over, as they hold nothing to compare: ${passedOver.join(", ")}.`)]
      : []),
    ...verdict(calibration),
  ];
}

function plain(line: string): Line {
  return { line, style: "plain" };
}

function rowOf({ info, comparison }: ComparedQuantity, startClock: number): string[] {
  if (comparison === null) return [info.label, "-", "-", "no value on the plan's days", ""];
  const { observed, simulated, difference, low, high, shown } = comparison;
  const signed = (value: number) => formatSpan(value, info);
  return [
    info.label,
    formatResponse(observed.mean, info, startClock),
    formatResponse(simulated.mean, info, startClock),
    `${signed(difference)} (${formatRange(signed(low), signed(high))})`,
    shown ? "differs" : "no difference shown",
  ];
}

function verdict({ gap, explanations, quantities }: Calibration): Line[] {
  const shown = quantities.filter(({ comparison }) => comparison?.shown).length;
  if (!gap) return [{ line: "No difference is shown: the plan agrees with what was observed.", style: "green" }];
  const head = `${shown} of ${quantities.length} differ.`;
  if (explanations.length === 0) {
    return [
      { line: `${head} No single figure (cycle, uptime, repair, people) explains a tenth of it.`, style: "yellow" },
    ];
  }
  return [
    { line: `${head} What would explain it, one figure moved at a time, on the same random numbers:`, style: "yellow" },
    ...explanations.map((explanation): Line => ({ line: explanationWords(explanation), style: styleOf(explanation) })),
    plain("A figure that would explain the gap need not be its cause: measure it before you change the plan."),
  ];
}

function styleOf({ closes, plausible }: Explanation): Style {
  return closes && plausible ? "green" : "plain";
}

/** "mean cycle time of evisceration: from 16.8 s to 18.5 s (+10.1 %) takes away 97 % of the gap; no difference is left. Plausible." */
export function explanationWords({ kind, label, from, to, removed, left, doubt }: Explanation): string {
  const value = (amount: number) => (kind === "people" ? String(amount) : formatDuration(amount));
  const change = kind === "people" ? "" : ` (${to > from ? "+" : ""}${formatNumber(100 * (to / from - 1))} %)`;
  const rest = left.length === 0 ? "no difference is left" : `still differing: ${left.join(", ")}`;
  const judged = doubt === "" ? "Plausible." : `Implausible: ${doubt}.`;
  return `${label}: from ${value(from)} to ${value(to)}${change} takes away ${Math.floor(100 * removed)} % of the gap; ${rest}. ${judged}`;
}
