/** Something a person wrote is not as it must be: one line for each fault. */
export class BadInput extends Error {
  readonly lines: readonly string[];
  /** Documents of the project that say how it must be, by their paths in it. */
  readonly guides: readonly string[];

  constructor(lines: readonly string[], guides: readonly string[] = []) {
    super(lines.join("\n"));
    this.name = "BadInput";
    this.lines = lines;
    this.guides = guides;
  }
}

export const PLAN_GUIDE = "sim/plan/README.md";
export const STUDY_GUIDE = "sim/study/README.md";
export const SIZE_GUIDE = "sim/size/README.md";
export const WORTH_GUIDE = "sim/worth/README.md";
export const IMPROVE_GUIDE = "sim/improve/README.md";
