import { type Located, located, locatedList } from "./located.ts";
import { chainStationsOf, stagesOf } from "./stages.ts";

type Steps = readonly (string | number)[];

/** One key of the file as written that sends heads from one place of work to a stage. */
export interface Send {
  /** Name of the place of work. */
  from: string;
  /** Name of the stage of the line that `from` is, or is on. */
  stage: string;
  to: string;
  at: Steps;
  /** Whether the head leaves before the work (never entered it) or at its end. */
  leaves: "before" | "at the end";
}

/** Everything that is written of where heads go, `next` included. What follows by order of the list is not in it. */
export function sendsOf(json: unknown): Send[] {
  return stagesOf(json).flatMap((stage) => [
    ...sendAt(stage, stage, "next", "at the end"),
    ...locatedList(json, ...stage.at, "diversions").flatMap((place) => sendAt(stage, place, "to", "at the end")),
    ...sendAt(stage, located(json, ...stage.at, "weights"), "else", "before"),
    ...(passesUnfinished(json, stage) ? sendAt(stage, stage, "unfinishedTo", "at the end") : []),
    ...[stage, ...chainStationsOf(json, stage)].flatMap((work) => takenOff(json, stage, work)),
  ]);
}

/** Some station on the chain lets heads pass unfinished. */
export function passesUnfinished(json: unknown, stage: Located): boolean {
  return chainStationsOf(json, stage).some(({ value }) => value.ifUnfinished === "pass to trim");
}

/** Heads in hand when something broke. */
function takenOff(json: unknown, stage: Located, work: Located): Send[] {
  return locatedList(json, ...work.at, "breakdowns").flatMap(({ at }) =>
    sendAt(stage, located(json, ...at, "headInHand"), "to", "before").map((send) => ({
      ...send,
      from: String(work.value.name),
    })),
  );
}

function sendAt(stage: Located, place: Located | null, key: string, leaves: Send["leaves"]): Send[] {
  const { name } = stage.value;
  const to = place?.value[key];
  if (place === null || typeof name !== "string" || typeof to !== "string") return [];
  return [{ from: name, stage: name, to, at: [...place.at, key], leaves }];
}
