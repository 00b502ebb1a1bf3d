import {
  type Fault,
  formatPath,
  isRecord,
  listWords,
  NO_FILES,
  nearestWords,
  PARSING,
  type Plan,
  readPlan,
  type TextFiles,
  tellable,
  zodFaults,
} from "../../asked/plan/index.ts";
import { amountFault, basePlan, planWith } from "../../asked/study/index.ts";
import { type ResponseInfo, responsesOf } from "../../day/observations/index.ts";
import { does } from "../../text/kinds/index.ts";
import { elementFaults, totals } from "./elementFaults.ts";
import { goalLabel, goalResponse } from "./goal.ts";
import type { ImproveQuestion } from "./question.ts";
import { type ImproveFile, improveFile } from "./schema/improveFile.ts";
import { type Counts, isMoved, type Space } from "./space.ts";
import { type BaseRead, spaceOfBudget } from "./spaceOfBudget.ts";
import { spaceOfPeople } from "./spaceOfPeople.ts";
import { spaceOfTimes } from "./spaceOfTimes.ts";
import { orderLimitFaults, ordersLimit, unusedFaults, weekFaults } from "./week/asksWeek.ts";
import { spaceOfWeek } from "./week/spaceOfWeek.ts";

type Asked = NonNullable<ImproveFile["allocate"]["places"]>;

export type ImproveReading = { question: ImproveQuestion; faults: [] } | { question: null; faults: Fault[] };

/** Smallest difference in overtime worth finding where the file names none, seconds. */
const OVERTIME_DIFFERENCE = 120;

/**
 * Checks the JSON of the file, its plan, and what every element makes of the plan by itself, at its fewest and at its
 * most; all faults come at once. Paths of files are taken from the folder of the file; `files` reads them.
 */
export function readImprove(written: unknown, files: TextFiles = NO_FILES): ImproveReading {
  const { json, fault } = tellable(written);
  if (fault !== null) return { question: null, faults: [fault] };
  const shape = improveFile().safeParse(json, PARSING);
  const base = readBase(json, files);
  const faults = [...(shape.success ? [] : zodFaults(shape.error.issues)), ...base.faults];
  if (base.read === null) return { question: null, faults };
  if (!shape.success) return { question: null, faults: [...faults, ...partFaults(json, base.read)] };
  const file = shape.data;
  const { space, faults: ofSpace } = readSpace(file, base.read);
  const known = responsesOf(base.read.plan);
  const response = known.find(({ key }) => key === goalResponse(file.goal, base.read!.plan));
  faults.push(
    ...ofSpace,
    ...(ofSpace.length > 0 || file.allocate.budget !== undefined ? [] : endFaults(space, base.read)),
    ...goalFaults(file, response),
    ...limitFaults(file, base.read.plan),
    ...orderLimitFaults(file, base.read.plan),
    ...orderFaults(file),
    ...yearlyFaults(file),
  );
  if (faults.length > 0 || response === undefined) return { question: null, faults };
  return { question: toQuestion(file, base.read, space, response), faults: [] };
}

function toQuestion(file: ImproveFile, base: BaseRead, space: Space, response: ResponseInfo): ImproveQuestion {
  const { name, question, seed, confidence, goal, probability, firstStage, atMost, search, interest, daysPerYear } =
    file;
  const usual = goal === "overtime" ? OVERTIME_DIFFERENCE : null;
  const priced = (goal === "margin" || goal === "cost") && space.kind === "budget";
  return {
    ...{ name, question, seed, confidence, goal, space, probability, firstStage, atMost },
    response: { ...response, label: goalLabel(response.key) ?? response.label },
    // Moving things by more minutes is no price to be set against what it brings.
    search: isMoved(space) ? { ...search, curve: 0 } : search,
    base: { name: file.baseName, ...base },
    limits: [
      ...file.limits.map(({ limit, beyond }) => ({
        name: limit,
        key: `beyond.${limit}`,
        share: beyond,
        of: "heads" as const,
      })),
      ...ordersLimit(file),
    ],
    difference: file.difference?.value ?? usual,
    yearly: priced ? { interest: interest!, daysPerYear: daysPerYear! } : null,
  };
}

function readBase(json: unknown, files: TextFiles): { read: BaseRead | null; faults: Fault[] } {
  const base = basePlan(json, files);
  if (base === null) return { read: null, faults: [] };
  if (base.fault !== null) return { read: null, faults: [base.fault] };
  const { plan, faults } = readPlan(base.json, base.files);
  if (plan !== null) return { read: { json: base.json, files: base.files, plan }, faults: [] };
  const joint = base.label === "plan" ? "." : ": ";
  const told = faults.map((fault) => ({
    ...fault,
    path: fault.path === "" ? base.label : `${base.label}${joint}${fault.path}`,
  }));
  return { read: null, faults: told };
}

/** Of a file that is not sound as a whole: what its sound parts say of the plan, so that all faults come at once. */
function partFaults(json: unknown, base: BaseRead): Fault[] {
  if (!isRecord(json)) return [];
  const { allocate, limits } = improveFile().shape;
  const [shared, kept] = [allocate.safeParse(json.allocate), limits.safeParse(json.limits)];
  return [
    ...(shared.success ? readSpace({ allocate: shared.data }, base).faults : []),
    ...(kept.success ? limitFaults({ limits: kept.data }, base.plan) : []),
  ];
}

function readSpace({ allocate }: Pick<ImproveFile, "allocate">, base: BaseRead): { space: Space; faults: Fault[] } {
  if (allocate.places !== undefined) return spaceOfPlaces(allocate.places, base.plan);
  if (allocate.people !== undefined) return spaceOfPeople(allocate.people, base.plan, base.json);
  if (allocate.times !== undefined) {
    const { space, faults } = spaceOfTimes(allocate.times, base.json);
    return { space, faults: [...faults, ...unusedFaults(allocate.times, base)] };
  }
  if (allocate.week !== undefined) {
    const faults = weekFaults(base.plan);
    return faults.length > 0 ? { space: EMPTY, faults } : spaceOfWeek(allocate.week, base.plan, base.json);
  }
  return spaceOfBudget(allocate.budget!, base);
}

/** What is wrong with the plan when an element has its fewest or its most, all others their fewest, of people their most, of hours today's. */
function endFaults(space: Space, base: BaseRead): Fault[] {
  // What is moved is moved by itself: the first moments of all of them need not go together. Nor need the fewest people of all
  // crews: one may go to 0 where another does its work; designs in which nobody does are left out of the search.
  const alone = space.kind === "people" || isMoved(space);
  const fewest = space.elements.map(({ from, to, today }) => (space.kind === "people" ? to : (today ?? from)));
  const ends = space.elements.flatMap(({ from, to }, index): Counts[] => [
    ...(alone ? [fewest.with(index, from)] : []),
    fewest.with(index, to),
  ]);
  const told = new Set<string>();
  return [fewest, ...ends].flatMap((counts) =>
    planWith(base, space.changeOf(counts)).faults.flatMap((fault) => {
      const path = `with ${space.nameOf(counts)}: ${fault.path}`;
      if (told.has(fault.path)) return [];
      told.add(fault.path);
      return [{ ...fault, path }];
    }),
  );
}

function goalFaults({ goal, difference }: ImproveFile, response: ResponseInfo | undefined): Fault[] {
  if (response !== undefined) return difference === undefined ? [] : amountFault(difference, ["difference"], response);
  const found = `the plan reckons no ${goal}`;
  const remedy = 'give the plan "money" with prices, and "pay" to its crews';
  return [{ path: "goal", found: `'${goal}', but ${found}`, allowed: "a goal that the plan can tell", remedy }];
}

function limitFaults({ limits }: Pick<ImproveFile, "limits">, plan: Plan): Fault[] {
  const names = plan.limits.map(({ name }) => name);
  return limits.flatMap(({ limit, beyond }, index): Fault[] => {
    const path = formatPath(["limits", index, "limit"]);
    const remedy = nearestWords(limit, names, names.length === 0 ? 'give the plan "limits"' : "name one of these");
    if (!names.includes(limit))
      return [{ path, found: `'${limit}' is no limit of the plan`, allowed: listWords(names), remedy }];
    if (limits.findIndex((other) => other.limit === limit) < index)
      return [{ path, found: `'${limit}' stands twice`, allowed: "each limit once", remedy: "delete one of them" }];
    if (beyond > 0) return [];
    const allowed = "more than 0, because no number of days can show that it never happens";
    return [
      {
        path: formatPath(["limits", index, "beyond"]),
        found: "0",
        allowed,
        remedy: 'write for example "0.1 %"',
      },
    ];
  });
}

function orderFaults({ firstStage, atMost }: ImproveFile): Fault[] {
  if (firstStage <= atMost) return [];
  const found = `${firstStage}, more than atMost, which is ${atMost}`;
  return [{ path: "firstStage", found, allowed: `${atMost} or less`, remedy: "" }];
}

/** A purchase lowers the margin of a day by its share of the yearly amount. */
function yearlyFaults({ goal, allocate, interest, daysPerYear }: ImproveFile): Fault[] {
  if ((goal !== "margin" && goal !== "cost") || allocate.budget === undefined) return [];
  const missing = (key: string, allowed: string, example: string): Fault => {
    return {
      path: key,
      found: `missing, and ${goal} is the goal of a budget`,
      allowed,
      remedy: `write for example ${example}`,
    };
  };
  return [
    ...(interest === undefined ? [missing("interest", "interest a year", '"6 %"')] : []),
    ...(daysPerYear === undefined ? [missing("daysPerYear", "working days a year", "250")] : []),
  ];
}

/** Of a question that is refused. */
const EMPTY: Space = {
  ...{ kind: "week", unit: "", elements: [], least: 0, most: 0, base: [], apart: [], offerCosts: [] },
  changeOf: () => ({ set: {}, insert: [], remove: [] }),
  nameOf: () => "",
};

/** Places to share out among buffers. */
function spaceOfPlaces({ total, least, among }: Asked, plan: Plan): { space: Space; faults: Fault[] } {
  const stations = plan.line.filter((stage) => does(stage, "buffer heads"));
  const at = ["allocate", "places"];
  const named = among.map(({ station, from, to }) => ({ name: station, from, to, price: 1 }));
  const faults = elementFaults(named, { at, key: "station", what: "station of the line" }, stations);
  const bounds = totals(named, { total, least, at });
  const space: Space = {
    kind: "places",
    unit: "places",
    elements: named,
    ...bounds.range,
    base: named.map(({ name }) => {
      const station = stations.find((each) => each.name === name);
      return station !== undefined && Number.isFinite(station.buffer) ? station.buffer : null;
    }),
    apart: [],
    offerCosts: [],
    changeOf: (counts) => ({
      set: Object.fromEntries(named.map(({ name }, index) => [formatPath(["line", name, "buffer"]), counts[index]])),
      insert: [],
      remove: [],
    }),
    nameOf: (counts) => named.map(({ name }, index) => `${name} ${counts[index]}`).join(", "),
  };
  return { space, faults: [...faults, ...bounds.faults] };
}
