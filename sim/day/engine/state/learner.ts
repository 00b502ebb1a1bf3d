import type { LearningColumns, StageColumns } from "../../line/index.ts";

/** How far the people at a stage have learnt its work: each position's share of the heads begun there counts. */
export class Learner {
  /** Heads begun at the stage, those before the first day included. */
  heads: number;
  private readonly columns: LearningColumns;
  private readonly positions: number;
  private row = 0;

  constructor(columns: LearningColumns, { positionFrom }: StageColumns, stage: number) {
    this.columns = columns;
    this.positions = positionFrom[stage + 1]! - positionFrom[stage]!;
    this.heads = columns.done * this.positions;
  }

  /** The next head's time, given that of somebody who knows the work. */
  secondsOf(seconds: number): number {
    const { heads, factor } = this.columns;
    const each = this.heads++ / this.positions;
    const last = heads.length - 1;
    while (this.row < last && heads[this.row + 1]! <= each) this.row++;
    if (this.row === last) return seconds;
    const [from, to] = [heads[this.row]!, heads[this.row + 1]!];
    const part = Math.max(0, each - from) / (to - from);
    return seconds * (factor[this.row]! + part * (factor[this.row + 1]! - factor[this.row]!));
  }
}
