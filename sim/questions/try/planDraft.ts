import { formatPath, isRecord, type Plan, resolvePath } from "../../asked/plan/index.ts";

/** A plan that a try is changing: what its file would say by now, and the paths that a study would set to get there. */
export class PlanDraft {
  /** Today's plan. */
  readonly plan: Plan;
  readonly #json: Record<string, unknown>;
  readonly #set = new Map<string, unknown>();

  /** `json`: the sound plan's file. */
  constructor(plan: Plan, json: unknown) {
    this.plan = plan;
    this.#json = structuredClone(json) as Record<string, unknown>;
  }

  /** What stands at the end of the path; elements of lists by name. Undefined where there is nothing. */
  at(...steps: string[]): unknown {
    const { place } = resolvePath(this.#json, steps);
    if (place === null) return undefined;
    const { parent, key } = place;
    return Array.isArray(parent) ? parent[Number(key)] : parent[key];
  }

  /** The records of a list; none where there is no list. */
  list(...steps: string[]): Record<string, unknown>[] {
    const found = this.at(...steps);
    return Array.isArray(found) ? found.filter(isRecord) : [];
  }

  /** Everything on the way to the last step has to be there. */
  put(steps: readonly string[], value: unknown): void {
    const { place } = resolvePath(this.#json, steps);
    if (place === null) throw new Error(`PlanDraft: nothing holds ${formatPath(steps)}`);
    (place.parent as Record<string | number, unknown>)[place.key] = structuredClone(value);
    const path = formatPath(steps);
    // Set last what was changed last: a whole list replaces what was set within it before.
    this.#set.delete(path);
    this.#set.set(path, value);
  }

  /** Path -> value, in the order in which a study has to set them. */
  changes(): Record<string, unknown> {
    return structuredClone(Object.fromEntries(this.#set));
  }
}
