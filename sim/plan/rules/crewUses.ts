import { located, locatedList } from "./located.ts";

/** One place where a crew is put to work. */
export interface CrewUse {
  at: readonly (string | number)[];
  crew: string;
  peoplePerPosition: number;
}

/** Every stage and crate step of the file as written that names a crew. */
export function crewUses(json: unknown): CrewUse[] {
  const steps = ["unloading", "feeding"]
    .map((key) => located(json, "liveHandling", key))
    .filter((step) => step !== null);
  return [...steps, ...locatedList(json, "line")].flatMap(({ at, value }) => {
    const { crew, peoplePerPosition = 1 } = value;
    if (typeof crew !== "string" || typeof peoplePerPosition !== "number") return [];
    return [{ at: [...at, "crew"], crew, peoplePerPosition }];
  });
}
