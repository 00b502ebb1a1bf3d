/** The only place where viz/ names the simulator's types; types only, so no simulator code is ever loaded by a picture. */

export type { Factor } from "../sim/asked/study/study.ts";
export type {
  Cause,
  CrewTrace,
  DayRecord,
  DaysRecord,
  KillStop,
  KillStopReason,
  LimitRecord,
  LoadRecord,
  LotRecord,
  MassRecord,
  OrderRecord,
  OwnTime,
  SectionRecord,
  STATES,
  StageRecord,
  State,
  StateTrace,
  StepTrace,
  Tally,
  Traces,
} from "../sim/day/engine/index.ts";
export type {
  Advice,
  CostSheet,
  Decision,
  DecisionRow,
  Difference,
  ElementaryEffects,
  Estimate,
  LevelStep,
  MassBalance,
  MeanTime,
  ReasonPart,
  ResponseInfo,
  SlopeEstimate,
  StudyResults,
  UtilitySheet,
  VariantResults,
  Why,
  WithheldSlope,
} from "../sim/days/results/index.ts";
export type { Calibration, CalibrationVerdict } from "../sim/questions/calibrate/index.ts";
export type {
  ByProductRow,
  ConnectionPart,
  ConnectionSheet,
  Dossier,
  EquipmentRow,
  KindTold,
  LayoutDoor,
  LayoutRoom,
  OwnerRow,
  PlantLayout,
  RailStretch,
  RoomKind,
} from "../sim/questions/dossier/index.ts";
export type { Doubt, DoubtEstimate, DoubtFigure, DoubtWords } from "../sim/questions/doubt/index.ts";
export type { ColumnFit, FamilyFit, FitAnswer, FitPicture } from "../sim/questions/fit/index.ts";
export type { Found, Improvement } from "../sim/questions/improve/index.ts";
export type { OptionsResult, Ranged } from "../sim/questions/options/index.ts";
export type { Season, SeasonKey } from "../sim/questions/season/index.ts";
