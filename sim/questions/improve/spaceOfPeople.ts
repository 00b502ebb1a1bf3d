import { type Fault, formatPath, isRecord, listWords, nearestWords, type Plan } from "../../asked/plan/index.ts";
import { fileSteps, steps, workplace } from "../../day/line/index.ts";
import { does } from "../../text/kinds/index.ts";
import { elementFaults, totals } from "./elementFaults.ts";
import type { ImproveFile } from "./schema/improveFile.ts";
import type { Space } from "./space.ts";

type Asked = NonNullable<ImproveFile["allocate"]["people"]>;

/** People to share out among crews; `json` is the plan as its file writes it. */
export function spaceOfPeople(
  { total, least, among }: Asked,
  plan: Plan,
  json: unknown,
): { space: Space; faults: Fault[] } {
  const at = ["allocate", "people"];
  const named = among.map(({ crew, from, to }) => ({ name: crew, from, to, price: 1 }));
  const bounds = totals(named, { total, least, at });
  const faults = [
    ...elementFaults(named, { at, key: "crew", what: "crew of the plan" }, plan.crews),
    ...bounds.faults,
    ...among.flatMap((element, index) => unevenFaults(element.crew, [...at, "among", index, "crew"], plan)),
    ...among.flatMap(({ positions }, index) => positionFaults(positions, [...at, "among", index, "positions"], plan)),
  ];
  const space: Space = {
    kind: "people",
    unit: "people",
    elements: named,
    ...bounds.range,
    base: among.map((element) => countNow(element, plan)),
    apart: [],
    offerCosts: [],
    changeOf: (counts) => ({
      set: Object.fromEntries(
        among.flatMap(({ crew, positions }, index) => [
          [formatPath(["crews", crew, "people"]), written(crew, counts[index]!, json)],
          ...positions.map((stage) => [pathOfWork(plan, stage, "positions"), counts[index]]),
        ]),
      ),
      insert: [],
      remove: [],
    }),
    nameOf: (counts) => named.map(({ name }, index) => `${name} ${counts[index]}`).join(", "),
  };
  return { space, faults };
}

/** Paths of the plan that a crew of `count` people sets, and of stations with `by` positions more than they have. */
export function settingsOfPeople(
  { crew, positions, count, by }: { crew: string; positions: readonly string[]; count: number; by: number },
  plan: Plan,
  json: unknown,
): Record<string, unknown> {
  const works = steps(plan).filter(({ name }) => positions.includes(name));
  return Object.fromEntries([
    [formatPath(["crews", crew, "people"]), written(crew, count, json)],
    ...works.map((step) => [pathOfWork(plan, step.name, "positions"), workplace(step).positions + by]),
  ]);
}

/** Null where its stations have other numbers of positions: the plan as it is is then none of the designs. */
export function countNow(
  { crew, positions }: Pick<Asked["among"][number], "crew" | "positions">,
  plan: Plan,
): number | null {
  const people = Math.max(0, ...peopleOf(plan, crew));
  const works = steps(plan).filter(({ name }) => positions.includes(name));
  return works.every((step) => workplace(step).positions === people) ? people : null;
}

function peopleOf(plan: Plan, crew: string): number[] {
  return plan.crews.find(({ name }) => name === crew)?.people ?? [];
}

/** A crew that the plan does not have, or of which "so many people" says nothing. */
export function crewFaults(crew: string, at: readonly (string | number)[], plan: Plan): Fault[] {
  const names = plan.crews.map(({ name }) => name);
  if (names.includes(crew)) return unevenFaults(crew, at, plan);
  const remedy = nearestWords(crew, names, "name one of these");
  return [{ path: formatPath(at), found: `'${crew}' is no crew of the plan`, allowed: listWords(names), remedy }];
}

/** "So many people" has one meaning only where every shift that the crew works has as many. */
function unevenFaults(crew: string, at: readonly (string | number)[], plan: Plan): Fault[] {
  const working = new Set(peopleOf(plan, crew).filter((people) => people > 0));
  if (working.size <= 1) return [];
  const found = `'${crew}' has ${[...working].join(" and ")} people in different shifts`;
  const remedy = "make a crew of each shift, or leave it out";
  return [{ path: formatPath(at), found, allowed: "a crew with as many people in every shift that it works", remedy }];
}

export function positionFaults(stages: readonly string[], at: readonly (string | number)[], plan: Plan): Fault[] {
  const works = steps(plan).filter((step) => does(step, "work"));
  return stages.flatMap((stage, index): Fault[] => {
    const step = works.find(({ name }) => name === stage);
    const path = formatPath([...at, index]);
    const names = works.map(({ name }) => name);
    if (step === undefined) {
      const remedy = nearestWords(stage, names, "name one of these");
      return [{ path, found: `'${stage}' is no place of work`, allowed: listWords(names), remedy }];
    }
    const { peoplePerPosition } = workplace(step);
    if (peoplePerPosition === 1) return [];
    const found = `'${stage}' takes ${peoplePerPosition} people for each position`;
    return [{ path, found, allowed: "a station with one person for each position", remedy: "leave it out" }];
  });
}

/** As the file has it: one number, or a number for each shift that has people. */
function written(crew: string, count: number, json: unknown): unknown {
  const crews = isRecord(json) && Array.isArray(json.crews) ? json.crews.filter(isRecord) : [];
  const people = crews.find(({ name }) => name === crew)?.people;
  if (!isRecord(people)) return count;
  return Object.fromEntries(Object.entries(people).map(([shift, before]) => [shift, before === 0 ? 0 : count]));
}

/** Where a place of work's key stands in the plan's file, as studies write it: "line.skinning.positions". */
function pathOfWork(plan: Plan, name: string, key: string): string {
  const step = steps(plan).find((each) => each.name === name);
  return formatPath([...(step === undefined ? ["line", name] : fileSteps(step)), key]);
}
