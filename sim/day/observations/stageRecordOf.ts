import { does } from "../../text/kinds/index.ts";
import type { DayRecord, StageRecord } from "../engine/index.ts";

/** The record of a stage of this name; crate steps and stages of the line may share a name, so the kind tells them apart. */
export function stageRecordOf(day: DayRecord, name: string, isCrates = false): StageRecord | undefined {
  return day.stages.find((stage) => stage.name === name && does(stage, "handle crates") === isCrates);
}
