/** Something a person wrote is not as it must be: one line for each fault. */
export class BadInput extends Error {
  readonly lines: readonly string[];

  constructor(lines: readonly string[]) {
    super(lines.join("\n"));
    this.name = "BadInput";
    this.lines = lines;
  }
}
