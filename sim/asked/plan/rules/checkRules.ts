import { does, type StageKind, stageKind } from "../../../text/kinds/index.ts";
import { mass, readClock, readQuantity, readShare, temperature, time } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import { parsePath } from "../parsePath.ts";
import { readPoint } from "../readPoint.ts";
import { resolvePath } from "../resolvePath.ts";
import { atStart } from "./atStart.ts";
import { breaksForSomeone } from "./breaksForSomeone.ts";
import { byProductShares } from "./byProductShares.ts";
import { calendar } from "./calendar.ts";
import { chains } from "./chains.ts";
import { cooling } from "./cooling.ts";
import { crateHandling } from "./crateHandling.ts";
import { crateStepsOf } from "./crateSteps.ts";
import { dwells } from "./dwells.ts";
import { enoughPeople } from "./enoughPeople.ts";
import { faultAt, type Located, located, locatedList, locatedTexts, namesOf } from "./located.ts";
import { nextStage } from "./nextStage.ts";
import { oneCurrency } from "./oneCurrency.ts";
import { presentation } from "./presentation.ts";
import { references } from "./references.ts";
import { sharesBy } from "./sharesBy.ts";
import { sizes } from "./sizes.ts";
import { leftOutNames, stagesOf, workplacesOf, writtenDoes } from "./stages.ts";
import { stationWork } from "./stationWork.ts";
import { stunned } from "./stunned.ts";
import { supplyHandling } from "./supplyHandling.ts";
import { uncertain } from "./uncertain.ts";
import { uniqueNames } from "./uniqueNames.ts";
import { comesAfter, type WayGraph, wayGraph } from "./wayGraph.ts";
import { ways } from "./ways.ts";
import { heldLots, withdrawals } from "./withdrawals.ts";

/** What the keys of one kind of stage say of each other; rules for stations are for those on chains as well. */
const RULES_OF_KIND: Record<StageKind, ((json: unknown) => Fault[])[]> = {
  station: [],
  dwell: [dwells, cooling],
  chain: [chains],
};

const RULES = [
  uniqueNames,
  references,
  sharedBreakdowns,
  ways,
  enoughPeople,
  stationWork,
  paces,
  sharesBy,
  ...Object.values(RULES_OF_KIND).flat(),
  hanging,
  byProductShares,
  presentation,
  plantUtilities,
  vesselFilling,
  supplyHandling,
  withdrawals,
  heldLots,
  atStart,
  crateHandling,
  calendar,
  cleaning,
  safeStop,
  stunned,
  breaksForSomeone,
  limitOrder,
  oneCurrency,
  sizes,
  sourcePaths,
  uncertain,
];

/** What the parts of a plan file say of each other, as far as they are sound. */
export function checkRules(json: unknown): Fault[] {
  return RULES.flatMap((rule) => rule(json));
}

/** Emptying is called for before the vessel is fuller than full. */
function vesselFilling(json: unknown): Fault[] {
  return locatedList(json, "vessels").flatMap(({ at, value }) => {
    const capacity = readQuantity(mass, value.capacity).value;
    const emptyAt = readQuantity(mass, value.emptyAt).value;
    if (capacity === null || emptyAt === null || emptyAt <= capacity) return [];
    const found = "emptying starts at more than the vessel holds";
    return [faultAt([...at, "emptyAt"], found, `${value.capacity} or less`, "lower it")];
  });
}

/** The stretch that a planned stop keeps empty runs down the line. */
function safeStop(json: unknown): Fault[] {
  const stretch = located(json, "day", "safeStop");
  if (stretch === null) return [];
  const names = namesOf(workplacesOf(json));
  const from = names.indexOf(String(stretch.value.from));
  const to = names.indexOf(String(stretch.value.to));
  if (from === -1 || to === -1 || from <= to) return [];
  const found = `'${stretch.value.to}' stands before '${stretch.value.from}' in the line`;
  return [faultAt([...stretch.at, "to"], found, "the same stage as from, or a later one", "swap the two")];
}

/** Cleaning takes some time; a section is one of the line, named once, and its water is counted with the plant's. */
function cleaning(json: unknown): Fault[] {
  const written = located(json, "day", "cleaning");
  if (written === null) return [];
  const sections = locatedList(json, ...written.at, "sections");
  const known = [...new Set(stagesOf(json).map(({ value }) => String(value.section ?? "line")))];
  const names = sections.map(({ value }) => String(value.section));
  const wet = sections.find(({ value }) => value.water !== undefined && value.water !== null);
  return [
    ...(written.value.length === undefined && sections.length === 0
      ? [
          faultAt(
            written.at,
            "no length and no sections",
            '"length", "sections" or both',
            'write for example "length": "45 min"',
          ),
        ]
      : []),
    ...sections.flatMap(({ at }, row) => {
      const name = names[row]!;
      if (!known.includes(name))
        return [
          faultAt(
            [...at, "section"],
            `'${name}' is no section`,
            listWords(known),
            nearestWords(name, known, "check the name"),
          ),
        ];
      return names.indexOf(name) < row
        ? [faultAt([...at, "section"], `'${name}' appears twice`, "each section once", "delete one of them")]
        : [];
    }),
    ...(wet !== undefined && located(json, "utilities") === null
      ? [
          faultAt(
            [...wet.at, "water"],
            "the plan counts no water of the plant",
            '"utilities" beside it',
            'add "utilities": {} to the plan',
          ),
        ]
      : []),
  ];
}

/** The hours of a pace come one after another. */
function paces(json: unknown): Fault[] {
  return workplacesOf(json).flatMap(({ at }) => inOrder(locatedList(json, ...at, "pace")));
}

function inOrder(parts: readonly Located[]): Fault[] {
  return parts.flatMap(({ at, value }, index) => {
    const before = readClock(parts[index - 1]?.value.from).value;
    const from = readClock(value.from).value;
    if (before === null || from === null || before < from) return [];
    const found = `"${value.from}" is not after "${parts[index - 1]!.value.from}"`;
    return [faultAt([...at, "from"], found, "hours in their order, each once", "put the entries in order")];
  });
}

/** A note on sources speaks for something that is there. */
function sourcePaths(json: unknown): Fault[] {
  return locatedList(json, "sources").flatMap(({ at, value }) => {
    const { path = "" } = value;
    if (typeof path !== "string" || path === "") return [];
    const steps = parsePath(path);
    if (steps === null)
      return [
        faultAt([...at, "path"], `"${path}" is no path`, 'such as "line.skinning.cycle"', "check dots and brackets"),
      ];
    const { fault } = resolvePath(json, steps);
    return fault === null ? [] : [{ ...faultAt([...at, "path"], "", "", ""), ...fault }];
  });
}

/** Heads are hung at a station, and onto a chain without a way of their own: its shackles move on. */
export function hanging(json: unknown): Fault[] {
  const stages = stagesOf(json);
  return [...firstIsStation(stages), ...stages.flatMap((_, index) => travelOntoChain(stages, index))];
}

function firstIsStation([first]: readonly Located[]): Fault[] {
  const kind = stageKind(first?.value.kind);
  if (first === undefined || kind === null || does({ kind }, "work")) return [];
  const remedy =
    'put a station before it that hangs the heads, say { "kind": "station", "name": "hanging", "cycle": "5 s" }';
  return [faultAt(first.at, `the line begins with a ${kind}`, "a station", remedy)];
}

function travelOntoChain(stages: readonly Located[], index: number): Fault[] {
  const { at, value } = stages[index] as Located;
  if (value.travel === undefined || value.travel === null) return [];
  const next = stages.find((stage) => stage.value.name === nextStage(stages, index));
  if (next === undefined || !writtenDoes(next.value, "carry stations")) return [];
  const found = `a travel time onto the chain '${next.value.name}', but its shackles do not wait for heads`;
  return [faultAt([...at, "travel"], found, "none before a chain", "delete it, or make the chain longer")];
}

/** What a shared breakdown stops is there, can be stopped, and is named once. */
function sharedBreakdowns(json: unknown): Fault[] {
  return locatedList(json, "sharedBreakdowns").flatMap((breakdown) => stopsOf(json, breakdown));
}

function stopsOf(json: unknown, { at }: Located): Fault[] {
  const places = workplacesOf(json);
  const dwells = places.filter(({ value }) => writtenDoes(value, "hold heads")).map(({ value }) => value.name);
  const named = [...crateStepsOf(json).map(({ name }) => name), ...places.map(({ value }) => value.name)];
  const names = named.filter((name): name is string => typeof name === "string" && !dwells.includes(name));
  const stops = locatedTexts(json, ...at, "stops");
  return stops.flatMap(({ at: place, text }, index) => {
    if (stops.findIndex((other) => other.text === text) < index)
      return [faultAt(place, `'${text}' appears twice among what it stops`, "each name once", "delete one of them")];
    if (names.includes(text)) return [];
    if (dwells.includes(text))
      return [
        faultAt(place, `'${text}' is a dwell: nothing runs there that could stop`, listWords(names), "delete it"),
      ];
    if (leftOutNames(json).includes(text))
      return [faultAt(place, `'${text}' is left out`, listWords(names), `name one of these or put '${text}' back`)];
    const remedy = nearestWords(text, names, "name one of these or add the stage");
    return [faultAt(place, `'${text}' is not a stage or crate step`, listWords(names), remedy)];
  });
}

/** A limit bounds something; limits and gates run down the line. */
function limitOrder(json: unknown): Fault[] {
  const graph = wayGraph(json);
  const limits = locatedList(json, "limits");
  return [
    ...limits.flatMap((limit) => [...bounds(limit), ...direction(limit, graph)]),
    ...locatedList(json, "gates").flatMap((gate) => direction(gate, graph)),
  ];
}

function bounds({ at, value }: Located): Fault[] {
  const min = value.min ?? null;
  const max = value.max ?? null;
  if (min === null && max === null)
    return [faultAt(at, "neither a min nor a max", "at least one of them", 'write for example "max": "10 s"')];
  const least = readQuantity(time, min).value;
  const most = readQuantity(time, max).value;
  if (least === null || most === null || least <= most) return [];
  return [faultAt(at, "min is more than max", "min <= max", "put the two in order")];
}

function direction({ at, value }: Located, graph: WayGraph): Fault[] {
  const from = readPoint(value.from).value;
  const to = readPoint(value.to).value;
  if (from === null || to === null || comesAfter(graph, from, to) !== false) return [];
  const found = `"${value.to}" does not come after "${value.from}" on a head's way`;
  return [faultAt([...at, "to"], found, "a later point than that of from", "swap the two, or name a later point")];
}

/** What the plant's consumers need to be reckoned by. */
function plantUtilities(json: unknown): Fault[] {
  const told = located(json, "utilities");
  if (told === null) return [];
  const cold = readQuantity(temperature, told.value.coldWater ?? "10 degC").value;
  const zeros = ["heating", "compressor"].flatMap((key) => {
    const part = located(json, "utilities", key);
    return part !== null && readShare(part.value.efficiency ?? 1).value === 0
      ? [faultAt([...part.at, "efficiency"], "it is 0", "more than 0", "raise it")]
      : [];
  });
  const consumers = locatedList(json, "utilities", "consumers").flatMap(({ at, value }) => [
    ...coldHot(cold, readQuantity(temperature, located(value, "water")?.value.at).value, [...at, "water", "at"]),
    ...(value.during === "cleaning" && located(json, "day", "cleaning") === null
      ? [
          faultAt(
            [...at, "during"],
            "it runs during cleaning, but the day has no cleaning",
            '"day.cleaning"',
            'add "cleaning" to the day',
          ),
        ]
      : []),
  ]);
  return [...zeros, ...consumers];
}

function coldHot(cold: number | null, hot: number | null, at: readonly (string | number)[]): Fault[] {
  if (cold === null || hot === null || hot > cold) return [];
  return [
    faultAt(
      at,
      `${hot} \u00b0C is no warmer than the fresh water of ${cold} \u00b0C`,
      "warmer than that",
      "leave it out for cold water",
    ),
  ];
}
