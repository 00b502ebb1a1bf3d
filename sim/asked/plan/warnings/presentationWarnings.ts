import { does } from "../../../text/kinds/index.ts";
import { formatShare } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import type { Plan } from "../plan.ts";
import { leftBefore, lineYield, massAlong } from "../presentation/massAlong.ts";
import { presentationWords } from "../presentation/presentationWords.ts";
import { publishedYield } from "../presentation/publishedYield.ts";
import { faultAt, type Located } from "../rules/located.ts";
import { stagesOf } from "../rules/stages.ts";

/** Two yields closer than this are the same: half a point of live weight. */
const SAME = 0.005;

/** Shares along the line that do not fit what is sold, or what the chiller is computed with. */
export function presentationWarnings(plan: Plan, json: unknown): Fault[] {
  return [...unsaid(plan), ...statedYield(plan), ...outsidePrint(plan), ...chillerWeights(plan, json)];
}

/** Plans from before `presentation`: words cannot be checked. */
function unsaid({ presentation, dressing, line }: Plan): Fault[] {
  if (presentation !== null || dressing === "" || massAlong(line).length === 0) return [];
  const left = formatShare(lineYield(line, "cold"));
  const found = `what stays on the carcass is given in words, which cannot be checked against the ${left} of live weight that the line leaves`;
  return [faultAt(["dressing"], found, "", 'write "presentation" instead, and "bodyParts" for the shares')];
}

/** Share of the live weight that the presentation speaks of. */
function ownYield({ presentation, line }: Plan): number {
  const { weighed, liveWeight, journeyLossShare } = presentation!;
  return lineYield(line, weighed) * (liveWeight === "farm" ? 1 - journeyLossShare! : 1);
}

function statedYield(plan: Plan): Fault[] {
  const stated = plan.presentation?.yield ?? null;
  if (stated === null || Math.abs(stated.share - ownYield(plan)) <= SAME) return [];
  const found = `${formatShare(stated.share)}, but the shares along the line leave ${formatShare(ownYield(plan))}`;
  return [faultAt(["presentation", "yield", "share"], found, "", "correct the shares or the yield")];
}

function outsidePrint(plan: Plan): Fault[] {
  const { presentation, line } = plan;
  const print = presentation === null ? null : publishedYield(presentation);
  if (presentation === null || print === null || massAlong(line).length === 0) return [];
  const own = ownYield(plan);
  if (own >= print.low - SAME && own <= print.high + SAME) return [];
  const words = presentationWords(presentation);
  const found = `the line leaves ${formatShare(own)} as ${words}; published yields of that are about ${formatShare(print.low)} to ${formatShare(print.high)}`;
  return [
    faultAt(
      ["presentation"],
      found,
      "",
      "check whether the shares belong to another presentation, for example with the head",
    ),
  ];
}

function chillerWeights({ line }: Plan, json: unknown): Fault[] {
  if (massAlong(line).length === 0) return [];
  return line.flatMap((stage, index) => {
    if (!does(stage, "hold heads") || stage.offLine || stage.dwell.kind !== "chilling") return [];
    const { at } = stagesOf(json)[index] as Located;
    const { carcassShare } = stage.dwell.chilling;
    const left = leftBefore(line, stage.name);
    if (Math.abs(left - carcassShare) <= SAME) return [];
    const found = `the chiller is computed for carcasses of ${formatShare(carcassShare)} of live weight, but the stages before it leave ${formatShare(left)}`;
    return [faultAt([...at, "chilling", "carcassShare"], found, "", "delete it: the share then follows from the line")];
  });
}
