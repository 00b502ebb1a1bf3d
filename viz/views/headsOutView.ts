import type { HeadsLine, HeadsOutColumns } from "../charts/index.ts";
import type { StepTrace, StudyResults, VariantResults } from "../contract.ts";
import { clockAt, formatNumber } from "../frame/index.ts";
import { dayScene, dayWords } from "./dayScene.ts";

/** Cumulative counts of a variant's first day: arrived, carcasses out, target. */
export function headsOutView(results: StudyResults, variant: VariantResults): HeadsOutColumns {
  const { day } = variant;
  const scene = dayScene(results, variant);
  const lines: HeadsLine[] = [];
  const arrived = `arrived: ${formatNumber(day.heads.arrived, 0)}`;
  // A load comes all at once. Heads that come one by one are known at the ends of bins, as carcasses out are.
  const shape = day.loads.length > 0 ? "step" : "straight";
  if (day.traces) lines.push(counted(day.traces.arrived, "arrived", shape, arrived));
  const target = targetLine(results, day.shiftEndSeconds, day.heads.arrived);
  if (target) lines.push(target);
  const out = day.heads.out.carcass ?? 0;
  const end = clockAt(day.finishSeconds, day.startClockSeconds);
  if (day.traces)
    lines.push(counted(day.traces.out, "out", "straight", `carcasses out: ${formatNumber(out, 0)} at ${end}`));
  return {
    ...scene,
    // A target that is reached only after the line was clear still has to end on the axis.
    endSeconds: Math.max(scene.endSeconds, target?.seconds.at(-1) ?? 0),
    title: "Heads in and heads out",
    caption:
      "Slope is speed: where carcasses out run flat, none came; the gap to the arrivals is what is in the plant, chiller included",
    subtitle: `Counted from the day's start, ${dayWords(results, variant)}${target ? `. Target: ${formatNumber(results.plan.targetHeadsPerHour!, 0)} heads/h over the shifts, breaks left out` : ""}`,
    description: describe(results, variant, target, out),
    shiftEndSeconds: day.shiftEndSeconds,
    lines,
  };
}

function counted(trace: StepTrace, role: "out" | "arrived", shape: HeadsLine["shape"], label: string): HeadsLine {
  if (trace.kind === "exact") return { label, role, shape: "step", seconds: trace.times, heads: trace.values };
  const seconds = trace.high.map((_, bin) => Math.min(trace.endSeconds, (bin + 1) * trace.binSeconds));
  return {
    label,
    role,
    shape,
    seconds: [0, ...seconds.slice(0, -1), trace.endSeconds],
    heads: [trace.low[0] ?? 0, ...trace.high],
  };
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
  const label = `target: ${formatNumber(heads.at(-1)!, 0)} at ${clockAt(seconds.at(-1)!, results.variants[0]!.day.startClockSeconds)}`;
  return { label, role: "target", shape: "straight", seconds, heads };
}

function describe(results: StudyResults, variant: VariantResults, target: HeadsLine | null, out: number): string {
  const { day } = variant;
  const end = clockAt(day.finishSeconds, day.startClockSeconds);
  const work = clockAt(day.workFinishSeconds, day.startClockSeconds);
  const over = (day.workFinishSeconds - day.shiftEndSeconds) / 60;
  const shift = over > 0 ? `${formatNumber(over, 0)} min after the last shift` : "within the shifts";
  const stop = day.status === "finished" ? "" : " The day did not end by itself: heads were left on the line.";
  const aim = target
    ? ` At ${formatNumber(results.plan.targetHeadsPerHour!, 0)} heads/h the target line reaches ${formatNumber(target.heads.at(-1)!, 0)} heads.`
    : "";
  return `${formatNumber(day.heads.arrived, 0)} heads arrived, ${formatNumber(out, 0)} carcasses were out by ${end}; the last work on the line ended at ${work}, ${shift}.${aim}${stop}`;
}
