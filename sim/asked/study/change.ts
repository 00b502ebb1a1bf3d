import type { FactorFile } from "./schema/factorFile.ts";
import type { Insertion } from "./study.ts";

/** What makes a variant out of the base: values set, then elements put in, then things taken out. */
export interface Change {
  set: Record<string, unknown>;
  insert: Insertion[];
  remove: string[];
}

type WrittenChange = Omit<NonNullable<FactorFile["options"]>[number], "name">;

export function toChange({ set = {}, insert = [], remove = [] }: WrittenChange): Change {
  return { set, insert: insert.map(toInsertion), remove };
}

function toInsertion({ before, after, element }: NonNullable<WrittenChange["insert"]>[number]): Insertion {
  return before === undefined
    ? { side: "after", path: after as string, element }
    : { side: "before", path: before, element };
}

/** Several changes as one: everything set first, everything put in next, everything taken out last. */
export function joinChanges(changes: readonly Change[]): Change {
  return {
    set: Object.fromEntries(changes.flatMap(({ set }) => Object.entries(set))),
    insert: changes.flatMap(({ insert }) => insert),
    remove: changes.flatMap(({ remove }) => remove),
  };
}
