import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { STAGE_KINDS, type StepKind } from "../../sim/text/kinds/index.ts";

const ROOT = resolve(import.meta.dirname, "../..");

/** Crate steps have the number of stations. */
type Numbered = Exclude<StepKind, "crates">;

/**
 * A day knows kinds by number, since it asks at every event. What each file that asks does at each kind: a new kind needs a
 * cell in every row, and what it says has to be done there.
 */
const BY_NUMBER: Record<string, Record<Numbered, string>> = {
  "sim/day/line/compileSlots.ts": {
    station: "a slot a position",
    dwell: "a slot for its way out, of a kind of its own",
    chain: "a slot for its steps",
    "chain station": "a slot a position",
  },
  "sim/day/engine/overnight/carryOver.ts": {
    station: "what waits there is kept (heads of a stream before hanging, crates)",
    dwell: "its heads stay with their times, and leave by its own slot in the morning",
    chain: "empty when a day ends",
    "chain station": "the same",
  },
  "sim/day/line/headWays.ts": {
    station: "on the main line by its next stage",
    dwell: "the same",
    chain: "the same",
    "chain station": "with its chain",
  },
  "sim/day/course/lineSketch.ts": {
    station: "on the way by its next stage",
    dwell: "the same",
    chain: "the same",
    "chain station": "with its chain",
  },
  "sim/day/course/recordCourse.ts": {
    station: "its end is an end of work",
    dwell: "its end is none",
    chain: "its end is none",
    "chain station": "its end is an end of work",
  },
  "sim/day/engine/accounting.ts": {
    station: "sums of own time kept when a position goes idle",
    dwell: "the same; empty places are starved in the trace",
    chain: "sums kept at every change",
    "chain station": "as a station",
  },
  "sim/day/engine/binding/pathCells.ts": {
    station: "owed to work",
    dwell: "owed to the dwell",
    chain: "owed to the chain",
    "chain station": "owed to work",
  },
  "sim/day/engine/conservation.ts": {
    station: "a place for each head there",
    dwell: "the same",
    chain: "the same",
    "chain station": "its heads have places on the chain",
  },
  "sim/day/engine/flow.ts": {
    station: "heads queue, a free position starts one and holds it until there is a place behind",
    dwell: "heads stay in the queue, the first leaves when its time is over",
    chain: "heads are hung on shackles and taken off at the end, by its steps",
    "chain station": "a head is let go in its window and rides on",
  },
  "sim/day/engine/killStops/standing.ts": {
    station: "stands when no position works",
    dwell: "stands when the first head cannot leave",
    chain: "stands when it does not move",
    "chain station": "as a station",
  },
  "sim/day/engine/leftOver.ts": {
    station: "heads left for want of people, a repair, a place and more",
    dwell: "heads left in time or for a place",
    chain: "heads left in time, for a place or for a station on it",
    "chain station": "heads left in time: the chain holds them",
  },
  "sim/day/engine/ownTimeRecord.ts": {
    station: "states of its positions",
    dwell: "states of its places",
    chain: "states of its way out",
    "chain station": "states of its positions",
  },
  "sim/day/engine/planned.ts": {
    station: "a pause ends: positions look again",
    dwell: "the same",
    chain: "a pause stops and starts its steps",
    "chain station": "as a station",
  },
  "sim/day/engine/present.ts": {
    station: "heads in queue and positions",
    dwell: "heads in the queue alone",
    chain: "heads on its ring",
    "chain station": "its heads are met on the chain",
  },
  "sim/day/engine/recordOf.ts": {
    station: "states of positions, places of the buffer",
    dwell: "states of places, which are also its positions",
    chain: "states of its way out, places of its ring",
    "chain station": "states of positions, places of the window",
  },
  "sim/day/engine/recorders.ts": {
    station: "no count of heads that entered",
    dwell: "a count of heads that entered",
    chain: "none",
    "chain station": "none",
  },
  "sim/day/engine/runDay.ts": {
    station: "after a full vessel positions look again",
    dwell: "after a full vessel its first heads leave",
    chain: "after a full vessel it goes on",
    "chain station": "as a station",
  },
  "sim/day/engine/serial/isSerial.ts": {
    station: "may go the short way, if plain",
    dwell: "the whole engine",
    chain: "the whole engine",
    "chain station": "the whole engine",
  },
  "sim/day/engine/state/breakdownState.ts": {
    station: "stops its positions",
    dwell: "the same",
    chain: "stops the chain",
    "chain station": "stops its positions",
  },
  "sim/day/engine/state/dayState.ts": {
    station: "positions may be the bottleneck by their states",
    dwell: "active when full with its first head still dwelling",
    chain: "active by what waits for it",
    "chain station": "as a station",
  },
  "sim/day/engine/state/stageState.ts": {
    station: "a pace of its own; all positions begin idle",
    dwell: "nothing to be idle",
    chain: "its pace is the chain's",
    "chain station": "as a station",
  },
  "sim/day/engine/state/stunnedState.ts": {
    station: "a leg of the way from stunning to sticking",
    dwell: "the same",
    chain: "a ride; may send unfinished heads",
    "chain station": "where a ride begins or ends",
  },
  "sim/day/engine/stunned/freePlaces.ts": {
    station: "heads in work may take a place",
    dwell: "every head in it may take one",
    chain: "free shackles; the head at its end may take a place",
    "chain station": "its heads stay on the chain",
  },
  "sim/day/engine/stunned/secondsUntilClear.ts": {
    station: "when work there will begin",
    dwell: "a free place for each, then the mean dwell",
    chain: "when shackles come by",
    "chain station": "heads on it are under way to nowhere",
  },
};

/** Comparisons with a word that is also the name of a kind. */
const OTHER_WORDS: Record<string, string> = {
  "sim/questions/estimate/estimateLine.ts": "what a ceiling is of",
  "sim/questions/estimate/estimateDay.ts": "what a ceiling is of",
  "sim/questions/size/easeLine.ts": "what a ceiling is of",
};

const WORDS = [...STAGE_KINDS, "crates", "chain station"].join("|");
const BY_NAME = new RegExp(
  `\\bkind\\)?\\s*[!=]==?\\s*"(?:${WORDS})"|"(?:${WORDS})"\\s*[!=]==?\\s*[\\w.?!]*kind\\b|\\bcase "(?:${WORDS})"|\\["(?:${WORDS})"[^\\]]*\\]\\.includes\\(`,
);
const COMPARED = /[!=]==? (?:STATION|DWELL|CHAIN|CHAIN_STATION)\b/;

const FILES = ["sim", "viz"].flatMap((folder) =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => `${folder}/${name}`),
);
const withText = (pattern: RegExp) =>
  FILES.filter((file) => pattern.test(readFileSync(join(ROOT, file), "utf8"))).sort();

describe("kinds of stages", () => {
  it("are compared by name nowhere: `does` and `byKind` of sim/text/kinds ask, so that the compiler names every place", () => {
    expect(withText(BY_NAME)).toEqual(Object.keys(OTHER_WORDS).sort());
  });

  it("are found by that pattern in every form of a comparison", () => {
    const forms = [
      'stage.kind === "dwell"',
      'step?.kind !== "crates"',
      '"chain" === value.kind',
      'all[0]!.kind === "chain"',
      'case "chain station"',
      '["dwell", "chain"].includes(kind)',
    ];
    expect(forms.filter((form) => !BY_NAME.test(form))).toEqual([]);
    expect(
      ['supply.kind === "loads"', 'kind: "station",', 'does(stage, "work")'].filter((form) => BY_NAME.test(form)),
    ).toEqual([]);
  });

  it("are compared by number in a day alone, in the files that the table above tells of", () => {
    expect(withText(COMPARED)).toEqual(Object.keys(BY_NUMBER).sort());
  });
});
