import { type Fault, formatPath, isRecord, listWords, nearestWords } from "../../asked/plan/index.ts";
import type { StepFile } from "./schema/stepFile.ts";
import { USUAL_STEPS } from "./usualSteps.ts";

/** A step before its figures are read: the usual one with what the demand says of it, or one of the demand's own. */
export interface MergedStep {
  name: string;
  section: string;
  offLine: boolean;
  json: Record<string, unknown>;
}

/** The steps of the line in order: the usual ones, changed as the demand says, its own ones put in, what it leaves out gone. */
export function mergeSteps(steps: Record<string, StepFile>, json: unknown): { merged: MergedStep[]; faults: Fault[] } {
  const written = isRecord(json) && isRecord(json.steps) ? json.steps : {};
  const merged = USUAL_STEPS.map(({ name, section, offLine, json: usual }): MergedStep => {
    return { name, section, offLine, json: overlaid(usual, written[name]) };
  });
  const own = Object.entries(steps).filter(([name]) => !merged.some((step) => step.name === name));
  const faults: Fault[] = [];
  for (const [name, { after }] of own) {
    const at = merged.findIndex((step) => step.name === after && !step.offLine);
    if (at === -1) faults.push(nowhere(name, after, merged));
    else
      merged.splice(at + 1, 0, {
        name,
        section: merged[at]!.section,
        offLine: false,
        json: { zone: merged[at]!.json.zone, ...(written[name] as object) },
      });
  }
  const usualAfter = Object.entries(steps).filter(
    ([name, { after }]) => after !== undefined && USUAL_STEPS.some((step) => step.name === name),
  );
  faults.push(...usualAfter.map(([name]) => misplaced(name)));
  return { merged: merged.filter(({ name }) => steps[name]?.leftOut !== true), faults };
}

/** A time takes the place of the usual time, in whichever way that is written. */
function overlaid(usual: Record<string, unknown>, given: unknown): Record<string, unknown> {
  if (!isRecord(given)) return usual;
  const { cycle, rate, ...rest } = usual;
  const times =
    "cycle" in given || "rate" in given
      ? {}
      : { ...(cycle === undefined ? {} : { cycle }), ...(rate === undefined ? {} : { rate }) };
  return { ...rest, ...times, ...given };
}

function nowhere(name: string, after: string | undefined, merged: readonly MergedStep[]): Fault {
  const names = merged.filter(({ offLine }) => !offLine).map((step) => step.name);
  const found =
    after === undefined ? `'${name}' is no usual step and does not say where it comes` : `'${after}' is no step`;
  const path = formatPath(["steps", name, ...(after === undefined ? [] : ["after"])]);
  const remedy =
    after === undefined
      ? nearestWords(name, names, 'write "after" and the step before it')
      : nearestWords(after, names, "name one of these");
  return { path, found, allowed: listWords(names), remedy };
}

function misplaced(name: string): Fault {
  const path = formatPath(["steps", name, "after"]);
  return {
    path,
    found: `'${name}' is a usual step and has its place`,
    allowed: "",
    remedy: "delete the key, or give the step a name of its own",
  };
}
