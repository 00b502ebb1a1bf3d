import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { LoadColumns, LoadRow } from "../charts/index.ts";
import type { LoadRecord, StudyResults, VariantResults } from "../contract.ts";
import { clockAt, isolated } from "../frame/index.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { panelOf, traceColumns } from "./queueView.ts";

/** More lorries than this are not told apart in one picture; the first ones are drawn, the others counted below it. */
const MOST_LOADS = 24;

/** Lorries and crates of a variant's first day; null when the supply does not come in loads. */
export function loadView(results: StudyResults, variant: VariantResults): LoadColumns | null {
  const { day } = variant;
  if (day.loads.length === 0) return null;
  const came = day.loads.filter(hasCome);
  const drawn = came.sort((a, b) => a.arrivedSeconds - b.arrivedSeconds).slice(0, MOST_LOADS);
  const panels = day.stages.flatMap((stage, index) => {
    const trace = day.traces?.queues[index];
    return stage.kind === "crates" && stage.queue.max > 0 && trace !== undefined
      ? [panelOf(stage, traceColumns(trace, day.finishSeconds))]
      : [];
  });
  const more = came.length - drawn.length;
  const away = day.loads.length - came.length;
  const notes = [
    ...(more > 0 ? [`${more} later lorries are not drawn.`] : []),
    ...(away > 0 ? [`${away} ${away === 1 ? "lorry" : "lorries"} did not come.`] : []),
  ];
  return {
    ...dayScene(results, variant),
    title: "Lorries and their crates",
    caption: "A long hatched bar is animals that wait; a long black line is a lorry that waits for its crates",
    subtitle: `Each lorry's crates above, its own stay below (dashed tick: when it was due), then the crates that wait at each step, ${dayWords(results, variant)}`,
    description: [describe(came), ...notes.slice(more > 0 ? 1 : 0)].join(" "),
    loads: drawn.map((load) => rowOf(load, day.startClockSeconds)),
    panels,
    footnote: notes.join(" "),
  };
}

type Come = LoadRecord & { arrivedSeconds: number };

function hasCome(load: LoadRecord): load is Come {
  return load.arrivedSeconds !== null;
}

function rowOf(load: Come, start: number): LoadRow {
  const name = isolated(load.name);
  const at = (words: string, seconds: number | null) =>
    seconds === null ? [] : [`${words} ${clockAt(seconds, start)}`];
  const times = [
    ...at("due", load.dueSeconds),
    ...at("in", load.arrivedSeconds),
    ...at("unloaded", load.unloadedSeconds),
    ...at("last head out of its crates", load.emptiedSeconds),
    ...at("crates washed", load.washedSeconds),
    ...at("lorry out", load.leftSeconds),
  ];
  return { ...load, name, note: countWords(load), words: `${name}: ${times.join(", ")}` };
}

function countWords({ crates, heads }: LoadRecord): string {
  return `${formatDecimals(crates, 0)} crates, ${formatDecimals(heads, 0)} heads`;
}

function describe(loads: readonly Come[]): string {
  const waits = loads.flatMap((load) =>
    load.emptiedSeconds === null ? [] : [{ load, seconds: load.emptiedSeconds - load.arrivedSeconds }],
  );
  const longest = waits.sort((a, b) => b.seconds - a.seconds)[0];
  const stays = loads.flatMap((load) => (load.leftSeconds === null ? [] : [load.leftSeconds - load.arrivedSeconds]));
  const left = loads.filter((load) => load.emptiedSeconds === null).length;
  const count = `${loads.length} ${loads.length === 1 ? "lorry" : "lorries"} came.`;
  const wait = longest
    ? ` Animals waited longest on ${isolated(longest.load.name)}: ${formatDuration(longest.seconds)} from its arrival to the last head out of its crates.`
    : "";
  const stay = stays.length > 0 ? ` The longest stay of a lorry was ${formatDuration(Math.max(...stays))}.` : "";
  return `${count}${wait}${stay}${left > 0 ? ` Of ${left} not all heads were taken.` : ""}`;
}
