import { formatDecimals } from "../../sim/text/units/index.ts";
import type { HeadsLine, HeadsOutColumns } from "../charts/index.ts";
import type { StepTrace, StudyResults, VariantResults } from "../contract.ts";
import { clockAt, isolated } from "../frame/index.ts";
import { overtimeWords } from "../words/index.ts";
import { chillersOf } from "./chillerView.ts";
import { dayScene, dayWords } from "./dayScene.ts";

/**
 * Cumulative counts of a variant's first day: arrived, hung, into each chiller, carcasses out, and the target. The target
 * counts from the start of the shift and is compared with the heads hung: carcasses leave the chiller hours later.
 */
export function headsOutView(results: StudyResults, variant: VariantResults): HeadsOutColumns {
  const { day } = variant;
  const scene = dayScene(results, variant);
  const target = targetLine(results, day.shiftEndSeconds, day.heads.arrived);
  const counts = countedLines(variant);
  const rate = formatDecimals(results.plan.targetHeadsPerHour ?? 0, 0);
  return {
    ...scene,
    // A target that is reached only after the line was clear still has to end on the axis.
    endSeconds: Math.max(scene.endSeconds, target?.seconds.at(-1) ?? 0),
    title: "Heads in and heads out",
    caption: "Steeper is faster, flat means nothing came; the gap between two lines is what is between them",
    subtitle: `Counted from the day's start, ${dayWords(results, variant)}${target ? `. Target: ${rate} heads/h over the shifts without breaks; compare it with the heads hung` : ""}`,
    description: describe(results, variant, target, counts),
    shiftEndSeconds: day.shiftEndSeconds,
    lines: target ? [counts[0]!, target, ...counts.slice(1)].filter((line) => line !== undefined) : counts,
  };
}

/** In the order in which heads come by: arrived, hung, into each chiller, out. */
function countedLines(variant: VariantResults): HeadsLine[] {
  const { day } = variant;
  const { traces } = day;
  if (traces === null) return [];
  const clock = (seconds: number) => clockAt(seconds, day.startClockSeconds);
  const last = (words: string, line: HeadsLine): HeadsLine => {
    return { ...line, label: `${words}: ${formatDecimals(line.heads.at(-1) ?? 0, 0)} by ${clock(reachedAt(line))}` };
  };
  const out = formatDecimals(day.heads.out.carcass ?? 0, 0);
  // A load comes all at once. Heads that come one by one are known at the ends of bins, as carcasses out are.
  const shape = day.loads.length > 0 ? "step" : "straight";
  const chillers = chillersOf(variant).flatMap(({ name }) => {
    const trace = traces.entered?.find((entered) => entered.name === name);
    return trace === undefined ? [] : [last(`into ${isolated(name)}`, counted(trace, "chiller", "straight"))];
  });
  return [
    { ...counted(traces.arrived, "arrived", shape), label: `arrived: ${formatDecimals(day.heads.arrived, 0)}` },
    // A run of an earlier version did not count them.
    ...(traces.hung === undefined ? [] : [last("hung", counted(traces.hung, "hung", "straight"))]),
    ...chillers,
    { ...counted(traces.out, "out", "straight"), label: `carcasses out: ${out} by ${clock(day.finishSeconds)}` },
  ];
}

function counted(trace: StepTrace, role: HeadsLine["role"], shape: HeadsLine["shape"]): HeadsLine {
  if (trace.kind === "exact") return { label: "", role, shape: "step", seconds: trace.times, heads: trace.values };
  const seconds = trace.high.map((_, bin) => Math.min(trace.endSeconds, (bin + 1) * trace.binSeconds));
  return {
    label: "",
    role,
    shape,
    seconds: [0, ...seconds.slice(0, -1), trace.endSeconds],
    heads: [trace.low[0] ?? 0, ...trace.high],
  };
}

/** When the count reaches its last value. */
function reachedAt({ seconds, heads }: HeadsLine): number {
  return seconds[heads.indexOf(heads.at(-1) ?? 0)] ?? 0;
}

/** The count at an instant, on the line as it is drawn. */
function countAt({ shape, seconds, heads }: HeadsLine, at: number): number {
  const next = seconds.findIndex((time) => time > at);
  if (next < 0) return heads.at(-1) ?? 0;
  if (next === 0) return 0;
  const [from, to] = [seconds[next - 1]!, seconds[next]!];
  const share = shape === "step" ? 0 : (at - from) / (to - from);
  return heads[next - 1]! + share * (heads[next]! - heads[next - 1]!);
}

/** Target rate over shift time less breaks, up to the heads that there are. Null without a target or without shifts. */
function targetLine(results: StudyResults, shiftEnd: number, arrived: number): HeadsLine | null {
  const rate = (results.plan.targetHeadsPerHour ?? 0) / 3600;
  if (!(rate > 0) || results.plan.shifts.length === 0) return null;
  const { shifts, breaks } = results.plan;
  const edges = [...shifts, ...breaks].flatMap((span) => [span.fromSeconds, span.toSeconds]);
  const times = [...new Set([0, ...edges, shiftEnd])].filter((at) => at >= 0 && at <= shiftEnd).sort((a, b) => a - b);
  const within = (spans: readonly { fromSeconds: number; toSeconds: number }[], at: number) =>
    spans.some((span) => at >= span.fromSeconds && at < span.toSeconds);
  const [seconds, heads] = [[times[0]!], [0]];
  for (let i = 1; i < times.length; i++) {
    const [from, to] = [times[i - 1]!, times[i]!];
    const runs = within(shifts, from) && !within(breaks, from);
    const gained = runs ? rate * (to - from) : 0;
    const before = heads.at(-1)!;
    if (arrived > 0 && before + gained > arrived) {
      seconds.push(from + (arrived - before) / rate);
      heads.push(arrived);
      break;
    }
    seconds.push(to);
    heads.push(before + gained);
  }
  const label = `target: ${formatDecimals(heads.at(-1)!, 0)} by ${clockAt(seconds.at(-1)!, results.variants[0]!.day.startClockSeconds)}`;
  return { label, role: "target", shape: "straight", seconds, heads };
}

function describe(
  results: StudyResults,
  variant: VariantResults,
  target: HeadsLine | null,
  counts: readonly HeadsLine[],
): string {
  const { day } = variant;
  const clock = (seconds: number) => clockAt(seconds, day.startClockSeconds);
  const heads = (count: number) => formatDecimals(count, 0);
  const hung = counts.find(({ role }) => role === "hung");
  const last = hung === undefined || day.heads.hung === 0 ? "" : `, the last of them by ${clock(reachedAt(hung))}`;
  const stop = day.status === "finished" ? [] : ["The day did not end by itself: heads were left on the line."];
  return [
    `${heads(day.heads.arrived)} heads arrived and ${heads(day.heads.hung)} were hung${last}.`,
    ...targetWords(results, variant, target, hung),
    overtimeWords(results, day),
    `${heads(day.heads.out.carcass ?? 0)} carcasses were out by ${clock(day.finishSeconds)}.`,
    ...stop,
  ].join(" ");
}

/** What was hung by the time at which the target ends. */
function targetWords(
  results: StudyResults,
  { day }: VariantResults,
  target: HeadsLine | null,
  hung: HeadsLine | undefined,
): string[] {
  if (target === null) return [];
  const [wanted, until] = [target.heads.at(-1)!, target.seconds.at(-1)!];
  const rate = formatDecimals(results.plan.targetHeadsPerHour!, 0);
  const words = `The target, ${rate} heads an hour without breaks, is ${formatDecimals(wanted, 0)} heads by ${clockAt(until, day.startClockSeconds)}`;
  if (hung === undefined) return [`${words}.`];
  return [`${words}; ${formatDecimals(Math.floor(countAt(hung, until)), 0)} were hung by then.`];
}
