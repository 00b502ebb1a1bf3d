import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { WipColumns, WipSection } from "../charts/index.ts";
import type { StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
import { dayScene, dayWords } from "./dayScene.ts";

/** Work in process by section of a variant's first day. A section that dwarfs the others (a chiller) gets its own panel. */
export function wipView(results: StudyResults, variant: VariantResults): WipColumns {
  const { day } = variant;
  const traces = (day.traces?.wip ?? []).map((trace) => ({
    ...binnedTrace(trace, drawingBinSeconds(day.finishSeconds)),
    name: isolated(trace.name),
  }));
  const binSeconds = traces[0]?.binSeconds ?? drawingBinSeconds(day.finishSeconds);
  const sections = traces.map(({ name, mean }) => ({ name, values: mean }));
  const alive = sections.filter((section) => section.values.some((value) => value > 0));
  const peaks = day.sections.map((section) => `${isolated(section.name)} ${formatDecimals(section.wip.max, 0)}`);
  return {
    ...dayScene(results, variant),
    title: "Heads on the line by section",
    caption: "A section that swells feeds a slower one; one that empties is fed too slowly",
    subtitle: `Work in process: mean number of heads in each ${formatDuration(binSeconds)}, stacked, ${dayWords(results, variant)}`,
    description: peaks.length === 0 ? "No section recorded." : `Most heads at one time: ${peaks.join(", ")}.`,
    binSeconds,
    panels: panelsOf(alive),
  };
}

function panelsOf(sections: readonly WipSection[]): WipColumns["panels"] {
  const peak = (section: WipSection) => Math.max(...section.values);
  const dwarfs = sections.filter((section) => {
    const others = sections.filter((other) => other !== section).reduce((sum, other) => sum + peak(other), 0);
    return others > 0 && peak(section) > 4 * others;
  });
  const rest = sections.filter((section) => !dwarfs.includes(section));
  if (dwarfs.length === 0) return [{ name: "on the line", sections }];
  return [
    { name: `on the line without ${dwarfs[0]!.name}`, sections: rest },
    { name: `in ${dwarfs[0]!.name} (on its own scale)`, sections: dwarfs },
  ];
}
