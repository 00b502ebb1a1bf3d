/** The kinds of stages: their names in files, and what sets them apart; and the kinds of readers. */

export { type Reader, readerOf } from "./readers.ts";
export {
  byKind,
  type Deed,
  does,
  type KindThat,
  STAGE_KINDS,
  type StageKind,
  type StepKind,
  stageKind,
} from "./stageKinds.ts";
