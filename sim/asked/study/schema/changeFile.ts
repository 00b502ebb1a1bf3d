import { z } from "zod";
import { foundWords, type Reading } from "../../../text/units/index.ts";
import { isRecord, readBy, record, saidText } from "../../plan/index.ts";

const MAX_CHANGES = 100;

/** The keys by which a variant, or one option of a factor, changes the plan. */
export function changeKeys() {
  return {
    set: values()
      .optional()
      .describe(
        "Path in the plan -> new value, set in this order. The value may be a whole stage: " +
          '{ "line.skinning": { "kind": "station", "name": "skinning", ... } }.',
      ),
    insert: z
      .array(insertion())
      .max(MAX_CHANGES)
      .optional()
      .describe("New elements of lists, such as stages, put in after everything was set, in this order."),
    remove: z
      .array(saidText())
      .max(MAX_CHANGES)
      .optional()
      .describe(
        'Paths of what is taken out, last of all: "line.scalding", "limits[0]", "line.skinning.breakdowns". What speaks of ' +
          "it elsewhere (limits, breaks, sources) must go or be set too.",
      ),
  };
}

function insertion() {
  return record({
    before: saidText().optional().describe('Path of the element it comes before: "line.skinning". Or "after".'),
    after: saidText().optional().describe('Path of the element it comes after: "line.stunning". Or "before".'),
    element: readBy(readElement, {}).describe("The whole new element as the plan file would write it, say a stage."),
  }).superRefine((value, context) => {
    const used = Number(value.before !== undefined) + Number(value.after !== undefined);
    const words = { allowed: "exactly one of before, after", remedy: "keep one" };
    if (used !== 1)
      context.addIssue({
        code: "custom",
        params: { found: used === 0 ? "no place is named" : "both sides", ...words },
      });
  });
}

/** Anything at all, so long as it is there: what it may be depends on the list it goes into. */
function readElement(written: unknown): Reading<unknown> {
  if (written !== undefined) return { value: written, fault: null };
  const remedy = 'write for example "element": { "kind": "station", "name": "scalding", "rate": "600 /h" }';
  return { value: null, fault: { found: "missing", allowed: "what is put in", remedy } };
}

/** Kept as written: a schema of keys and values would pass over a key such as "__proto__" in silence. */
function values() {
  return readBy(readValues, { type: "object", minProperties: 1 });
}

function readValues(written: unknown): Reading<Record<string, unknown>> {
  if (isRecord(written) && Object.keys(written).length > 0) return { value: written, fault: null };
  const remedy = 'write for example { "line.skinning.buffer": 12 }';
  return {
    value: null,
    fault: { found: `${foundWords(written)} changes nothing`, allowed: "paths with their new values", remedy },
  };
}
