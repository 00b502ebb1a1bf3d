import type { Plan } from "../../asked/plan/index.ts";
import { sectionsOf, steps } from "../line/index.ts";
import type { ResponseInfo } from "./responseInfo.ts";
import { responsesByGroup } from "./responseList.ts";

/** A response as a list shows it. */
export interface ListedResponse extends ResponseInfo {
  /** Its key with "*" for each name of the plan: equal for those that ask the same of another station, crew or limit. */
  family: string;
}

export interface ResponseGroup {
  /** What its responses tell of. */
  name: string;
  responses: ListedResponse[];
}

/** What can be measured on a day of this plan, by what it tells of, in the order of `responsesOf`. */
export function responseGroups(plan: Plan): ResponseGroup[] {
  const names = namesIn(plan);
  return responsesByGroup(plan).map(({ name, ofPosts, responses }) => ({
    name,
    responses: responses.map(({ of: _, ...info }) => ({
      ...info,
      family: ofPosts ? info.key : familyOf(info.key, names),
    })),
  }));
}

/** Everything that a plan gives a name to and a key may end in, longest first: one name may begin with another. */
function namesIn(plan: Plan): string[] {
  const { crews, limits, gates, vessels, sharedBreakdowns, supply } = plan;
  const named = [crews, limits, gates, vessels, sharedBreakdowns, supply.kind === "loads" ? supply.loads : []];
  const names = [...steps(plan).map(({ name }) => name), ...sectionsOf(plan), ...named.flat().map(({ name }) => name)];
  return [...new Set(names)].sort((a, b) => b.length - a.length);
}

/** A name counts where it stands between points, or between a point and the end. */
function familyOf(key: string, names: readonly string[]): string {
  return names.reduce(withoutName, key);
}

function withoutName(key: string, name: string): string {
  const literal = name.replace(/[\\^$.*+?()[\]{}|/-]/g, "\\$&");
  return key.includes(name) ? key.replace(new RegExp(`\\.${literal}(?=\\.|$)`, "g"), ".*") : key;
}
