import { z } from "zod";
import { dayRecordShape } from "./dayRecordShape.ts";
import { unpacked, withoutRuns } from "./resultsFile.ts";
import type { StudyResults } from "./studyResults.ts";

export type ReadResults = { results: StudyResults; problem: null } | { results: null; problem: string };

/**
 * The results in the text of a results.json, as they were before they were written: what JSON had to write as null for
 * want of a word is infinite again. Those in columns have no `values`: values.parquet beside them has. `problem` says why a
 * text holds none.
 */
export function readResults(text: string): ReadResults {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return { results: null, problem: "this is no JSON; the file is cut off or was changed, so run it again" };
  }
  try {
    if (isOfFormat(json, 2)) json = unpacked(json);
    else if (isOfFormat(json, 3)) json = withoutRuns(json);
  } catch {
    return { results: null, problem: "its columns do not fit together; the file was changed, so run it again" };
  }
  const found = resultsShape().safeParse(json);
  if (!found.success) {
    const [first] = found.error.issues;
    const where = first === undefined || first.path.length === 0 ? "" : ` (at ${first.path.join(".")})`;
    return {
      results: null,
      problem: `this does not hold the results of a run${where}; name the folder of a day or study`,
    };
  }
  return { results: withInfinity(json as StudyResults), problem: null };
}

/** 2 is in columns, 3 has traces in runs. */
function isOfFormat(json: unknown, format: 2 | 3): json is object {
  return typeof json === "object" && json !== null && "format" in json && json.format === format;
}

/** What the report walks through; a result of another format is not read at all. */
function resultsShape() {
  const response = z.looseObject({ key: z.string(), label: z.string(), unit: z.string() });
  const variant = z.looseObject({
    name: z.string(),
    days: z.number(),
    levels: z.array(z.number()),
    estimates: z.record(z.string(), z.looseObject({ mean: z.number() })),
    differences: z.record(z.string(), z.looseObject({ mean: z.number() })).nullable(),
    day: dayRecordShape(),
  });
  return z.looseObject({
    format: z.literal(1),
    gambrel: z.string(),
    study: z.looseObject({ name: z.string(), question: z.string(), replications: z.number(), confidence: z.number() }),
    plan: z.looseObject({ name: z.string(), sources: z.array(z.looseObject({ path: z.string() })) }),
    responses: z.array(response),
    factors: z.array(z.looseObject({ name: z.string(), levels: z.array(z.string()) })),
    procedure: z.looseObject({ observation: z.string() }),
    variants: z.array(variant).min(1),
  });
}

function withInfinity(results: StudyResults): StudyResults {
  for (const { day } of results.variants) {
    for (const stage of day.stages) {
      stage.places = unlessNull(stage.places);
      stage.positions = unlessNull(stage.positions);
      // A run of an earlier version does not know it.
      stage.ownTime ??= null;
    }
    day.killStops ??= null;
    for (const gate of day.gates) gate.atMost = unlessNull(gate.atMost);
  }
  return results;
}

function unlessNull(count: number | null): number {
  return count ?? Number.POSITIVE_INFINITY;
}
