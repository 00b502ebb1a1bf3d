import { formatPath } from "../../asked/plan/index.ts";
import { STUN_TO_STICK } from "../size/index.ts";
import type { NewAsked } from "./askNew.ts";
import { HANDLERS } from "./crewNames.ts";
import type { AnswerKey, NewAnswers } from "./question.ts";

const DECIDES = "the law at the site and the official veterinarian decide";
const FIRST_LOAD = ["supply", "loads", 0];

type Path = readonly (string | number)[];

interface PlanSource {
  path: string;
  kind: "assumed" | "invented" | "published";
  note: string;
}

/** Where the plan writes what one question asks. */
const PLACES: Partial<Record<AnswerKey, (answers: NewAnswers) => Path[]>> = {
  start: () => [["day", "shifts", 0, "from"]],
  end: () => [["day", "shifts", 0, "to"]],
  breaks: () => [["day", "breaks"]],
  lorries: ({ lorries }) => (lorries === 1 ? [] : [[...FIRST_LOAD, "repeat", "times"]]),
  firstLorry: () => [[...FIRST_LOAD, "at"]],
  every: ({ lorries }) => (lorries === 1 ? [] : [[...FIRST_LOAD, "repeat", "every"]]),
  headsPerCrate: () => [[...FIRST_LOAD, "headsPerCrate"]],
  crates: () => [[...FIRST_LOAD, "crates"]],
  handling: () => [["liveHandling", "way"]],
  handlers: () => [["crews", HANDLERS, "people"]],
  skinning: ({ steps }) => (steps.includes("skinning") ? [["line", "skinning", "work"]] : []),
  bleeding: () => [["line", "bleeding", "dwell"]],
  pay: ({ pay, people }) =>
    pay === null ? [] : [HANDLERS, ...Object.keys(people)].map((crew) => ["crews", crew, "pay"]),
};

/** For each figure that was asked for whether somebody gave it or it is a guess; one line for all the others. */
export function newSources({ answers, given }: NewAsked): PlanSource[] {
  const ofOne = Object.entries(PLACES).flatMap(([key, places]) =>
    places(answers).map((path) => sourceOf(path, given.has(key))),
  );
  return [
    { path: "", kind: "invented", note: "Guess: every figure that no other line speaks for; replace it by your own" },
    ...stepLine(given),
    ...ofOne,
    ...Object.keys(answers.seconds).map((name) => sourceOf(cyclePath(name, answers), given.has(`seconds.${name}`))),
    ...Object.keys(answers.people).map((name) => sourceOf(["crews", name, "people"], given.has(`people.${name}`))),
    ...Object.entries(answers.limits).flatMap(([name, seconds]) =>
      seconds === null ? [] : [limitLine(name, given.has(`limits.${name}`))],
    ),
  ];
}

function stepLine(given: ReadonlySet<string>): PlanSource[] {
  return [sourceOf(["line"], given.has("steps"), "which steps there are")];
}

function cyclePath(name: string, { people }: NewAnswers): Path {
  return name in people ? ["line", name, "cycle", "lognormal", "mean"] : ["line", name, "cycle"];
}

function sourceOf(path: Path, asked: boolean, what = ""): PlanSource {
  const of = what === "" ? "" : `, ${what}`;
  return asked
    ? { path: formatPath(path), kind: "assumed", note: `Asked${of}: as it was answered` }
    : { path: formatPath(path), kind: "invented", note: `Guess${of}: a figure to begin with; replace it by your own` };
}

function limitLine(name: string, asked: boolean): PlanSource {
  const path = formatPath(["limits", name, "max"]);
  if (!asked && name === STUN_TO_STICK.name) return { path, kind: "published", note: limitSource(name, asked) };
  return { path, kind: asked ? "assumed" : "invented", note: limitSource(name, asked) };
}

/** What stands beside a limit, in its own words and among the sources. */
export function limitSource(name: string, asked: boolean): string {
  if (asked) return `Asked: as it was answered; ${DECIDES}`;
  return name === STUN_TO_STICK.name ? STUN_TO_STICK.source : `Guess: a house rule to begin with; ${DECIDES}`;
}
