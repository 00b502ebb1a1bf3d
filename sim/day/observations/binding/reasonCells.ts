import type { Plan } from "../../../asked/plan/index.ts";
import type { StepKind } from "../../../text/kinds/index.ts";
import type { Cause, PathCell } from "../../engine/index.ts";
import { type Step, stageOf, steps, workplace } from "../../line/index.ts";

/** Everything that the line may wait for in the plan's day, in line order; more than one day will show. */
export function reasonCells(plan: Plan): PathCell[] {
  const cell = (cause: Cause, stage = "", detail = ""): PathCell => ({ cause, stage, detail });
  const walks = plan.crews.some(({ walkSeconds }) => walkSeconds > 0);
  const { supply } = plan;
  return [
    ...(supply.kind === "loads" ? supply.loads.map(({ name }) => cell("load", "", name)) : []),
    ...(supply.kind === "stream" ? [cell("arrivals")] : []),
    ...(plan.liveHandling?.fleet ? [cell("lorry away")] : []),
    ...(beginsWithSome(plan) && supply.kind === "loads" ? [cell("left over")] : []),
    ...steps(plan).flatMap((step) => {
      const { crews, breakdowns, positions } = workplace(step);
      const isCrewed = crews.length > 0;
      const isRepaired = breakdowns.some(({ crew }) => crew !== null);
      return [
        cell(OWN_CAUSES[step.kind], step.name),
        ...(beginsWithSome(plan) ? [cell("left over", step.name)] : []),
        cell("place", step.name),
        cell("hold", step.name),
        ...(isCrewed || isRepaired ? [cell("people", step.name)] : []),
        ...(mayLack(plan, step) ? [cell("absent", step.name)] : []),
        ...(isCrewed && positions > 1 ? [cell("few people", step.name)] : []),
        ...(isCrewed && walks ? [cell("walking", step.name)] : []),
        ...(stageOf(step)?.travelSeconds ? [cell("travel", step.name)] : []),
        ...(mayStop(plan, step, isCrewed) ? [cell("planned stop", step.name)] : []),
        ...(isRepaired ? [cell("repairer", step.name)] : []),
        ...breakdowns.map(({ name }) => cell("repair", step.name, name)),
      ];
    }),
    ...(plan.stunned?.late ? [cell("help", plan.stunned.to)] : []),
    ...plan.sharedBreakdowns.flatMap(({ name, crew }) => [
      cell("shared breakdown", "", name),
      ...(crew === null ? [] : [cell("shared repairer", "", name)]),
    ]),
    ...plan.vessels.map(({ name }) => cell("emptying", "", name)),
  ];
}

/** The day goes on from one before, or from what the plan says is there. */
function beginsWithSome({ day, atStart }: Plan): boolean {
  return day.overnight !== undefined || atStart !== undefined;
}

/** What a step's own time is called on the path. */
const OWN_CAUSES: Record<StepKind, Cause> = {
  crates: "work",
  station: "work",
  dwell: "dwell",
  chain: "chain",
  "chain station": "work",
};

/** Somebody who works or repairs there can be absent. */
function mayLack(plan: Plan, step: Step): boolean {
  const { crews, breakdowns } = workplace(step);
  const names = [...crews, ...breakdowns.map(({ crew }) => crew)];
  const lenders = plan.crews.flatMap(({ cover }) => cover?.by.map(({ crew }) => crew) ?? []);
  return plan.crews.some(
    ({ name, absentShare, cover }) =>
      names.includes(name) && (absentShare > 0 || cover !== undefined || lenders.includes(name)),
  );
}

function mayStop({ day, line, stunned }: Plan, step: Step, isCrewed: boolean): boolean {
  if (isCrewed || step.name === line[0]?.name || step.name === day.safeStop?.from) return true;
  if (step.name === stunned?.from) return true;
  return day.breaks.some(({ stages }) => stages.includes(step.name));
}
