import { formatRange, formatSpan } from "../observations/index.ts";
import type { Advice, MeanEstimate, SlopeEstimate, TriedChange, Why } from "../results/index.ts";

type Tried = Omit<Advice, "words">;

const MOST_STAGES = 3;

/**
 * The advice in sentences: one for each of the stages that bind most, with what was tried there, then people, then what
 * came of nothing. Every figure has its interval.
 */
export function adviceWords(why: Why, advice: Tried): string[] {
  const stages = why.stages.slice(0, MOST_STAGES).map(({ stage, share }) => stageWords(stage, share, why, advice));
  const people = advice.changes.filter(({ kind }) => kind === "person");
  const useless = advice.changes.filter((change) => !change.difference.shown);
  return [
    ...stages,
    ...people.filter(({ difference }) => difference.shown).map((change) => `${sentence(worth(change, advice))}.`),
    ...(useless.length === 0 ? [] : [`No difference shown: ${useless.map(({ label }) => label).join("; ")}.`]),
  ];
}

function stageWords(stage: string, share: MeanEstimate, why: Why, advice: Tried): string {
  const here = advice.changes.filter(
    ({ of, kind, difference }) => of === stage && kind !== "person" && difference.shown,
  );
  const slope = advice.response.key === "finish" ? slopeOf(stage, why) : undefined;
  const parts = [
    `${sentence(stage)} binds ${percent(share)} of the day`,
    ...(slope === undefined ? [] : [slopeWords(slope)]),
    ...here
      .filter(({ kind }) => kind !== "shorter cycle" || slope === undefined)
      .map((change) => worth(change, advice)),
  ];
  return `${parts.join("; ")}.`;
}

/** Where one run cannot tell the slope, the quicker cycle that was tried speaks instead. */
function slopeOf(stage: string, { slopes }: Why): SlopeEstimate | undefined {
  return slopes.find((each) => each.stage === stage && each.parameter === "cycle time");
}

function slopeWords({ slope }: SlopeEstimate): string {
  const end = { key: "", label: "", unit: "s", format: "duration" as const, better: null };
  const span = (seconds: number) => formatSpan(seconds, end, "plain");
  const interval = slope.low === null ? "" : ` (${formatRange(span(slope.low), span(slope.high!))})`;
  return `one second less per head there ends the work ${span(slope.mean)}${interval} earlier`;
}

/** "one person more in hanging: end of work 12.3 min (8.1 to 16.5) earlier". */
function worth({ label, difference }: TriedChange, { response }: Tried): string {
  const better = response.better === "less" ? difference.mean < 0 : difference.mean > 0;
  const size = (value: number) => formatSpan(Math.abs(value), response, "plain");
  const [low, high] = difference.mean < 0 ? [difference.high, difference.low] : [difference.low, difference.high];
  const interval = low === null || high === null ? "" : ` (${formatRange(size(low), size(high))})`;
  return `${label} is worth ${better ? "" : "a loss of "}${size(difference.mean)}${interval}`;
}

function percent({ mean, low, high }: MeanEstimate): string {
  const whole = (share: number) => (share * 100).toFixed(share < 0.1 ? 1 : 0);
  const interval = low === null || high === null ? "" : ` (${whole(Math.max(0, low))} to ${whole(Math.min(1, high))})`;
  return `${whole(mean)} %${interval}`;
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
