import { crateStepsOf } from "./crateSteps.ts";
import { type Located, located, locatedList, locatedTexts } from "./located.ts";
import { workplacesOf } from "./stages.ts";

type Steps = readonly (string | number)[];

/** One place where people are put to work: by the first of the crews that has somebody free. */
export interface CrewUse {
  at: Steps;
  crews: { at: Steps; text: string }[];
  people: number;
  /** What takes so many people. */
  what: "one position" | "a repair" | "an emptying" | "a filter change" | "help for a stunned head";
}

/** Everything in the file as written that names a crew to work. */
export function crewUses(json: unknown): CrewUse[] {
  const places = [...crateStepsOf(json), ...workplacesOf(json)];
  const repairs = places.flatMap(({ at }) => locatedList(json, ...at, "breakdowns"));
  const late = located(json, "stunned", "late");
  const filter = located(json, "liveHandling", "washing", "filterChange");
  return [
    ...places.flatMap((place) => positions(json, place)),
    ...repairs.flatMap((repair) => onePerson(repair, "a repair")),
    ...locatedList(json, "sharedBreakdowns").flatMap((repair) => onePerson(repair, "a repair")),
    ...(filter === null ? [] : onePerson(filter, "a filter change")),
    ...locatedList(json, "vessels").flatMap((vessel) => onePerson(vessel, "an emptying")),
    ...(late === null ? [] : onePerson(late, "help for a stunned head")),
  ];
}

function positions(json: unknown, { at, value }: Located): CrewUse[] {
  const { crew, peoplePerPosition = 1 } = value;
  const place = [...at, "crew"];
  const crews = typeof crew === "string" ? [{ at: place, text: crew }] : locatedTexts(json, ...place);
  if (crews.length === 0 || typeof peoplePerPosition !== "number") return [];
  return [{ at: place, crews, people: peoplePerPosition, what: "one position" }];
}

function onePerson({ at, value }: Located, what: CrewUse["what"]): CrewUse[] {
  const place = [...at, "crew"];
  return typeof value.crew === "string"
    ? [{ at: place, crews: [{ at: place, text: value.crew }], people: 1, what }]
    : [];
}
