import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { CrewColumns, CrewPanel } from "../charts/index.ts";
import type { CrewTrace, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { WORK_IN_HAND_WORDS } from "../words/index.ts";
import { binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
import { dayScene, dayWords } from "./dayScene.ts";

/** People at work and on duty over a variant's first day; null for a plan without crews. */
export function crewView(results: StudyResults, variant: VariantResults): CrewColumns | null {
  const { crews, traces, finishSeconds } = variant.day;
  if (crews.length === 0) return null;
  const wished = drawingBinSeconds(finishSeconds);
  const binSeconds = traces?.crews[0] ? binnedTrace(traces.crews[0].busy, wished).binSeconds : wished;
  const shares = crews.map(({ name, busySeconds, presentSeconds }) => ({
    name: isolated(name),
    share: presentSeconds > 0 ? busySeconds / presentSeconds : 0,
  }));
  return {
    ...dayScene(results, variant),
    title: "Who had work in hand",
    caption: "White under the line: people on duty with nothing to do. No white: nobody to spare",
    subtitle: `People on duty (line) and with work in hand (hatched), mean of each ${formatDuration(binSeconds)}, ${dayWords(results, variant)}`,
    description: describe(shares),
    binSeconds,
    panels: (traces?.crews ?? []).map((trace, index) => panelOf(trace, shares[index]!.share, wished)),
    footnote: traces === null ? "This day was run without traces, so the crews cannot be drawn." : WORK_IN_HAND_WORDS,
  };
}

function panelOf(trace: CrewTrace, share: number, binSeconds: number): CrewPanel {
  const present = binnedTrace(trace.present, binSeconds);
  return {
    name: isolated(trace.name),
    note: `at work ${formatDecimals(share * 100, 0)} % of time on duty`,
    largest: Math.max(0, ...present.high),
    busy: binnedTrace(trace.busy, binSeconds).mean,
    present: present.mean,
  };
}

function describe(shares: readonly { name: string; share: number }[]): string {
  const sorted = [...shares].sort((a, b) => b.share - a.share);
  return `With work in hand, share of time on duty: ${sorted.map(({ name, share }) => `${name} ${formatDecimals(share * 100, 0)} %`).join(", ")}.`;
}
