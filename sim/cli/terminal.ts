import pc from "picocolors";

export type Style = "plain" | "bold" | "dim" | "red" | "yellow" | "green";

/** Where the program speaks: words for people to standard error, data to standard output. */
export interface Terminal {
  /** One line for people. What would act on the terminal or turn the line
   * round (control characters, direction marks, halves of characters) is shown as "?": words may quote a file. */
  say(line?: string, style?: Style): void;
  /** Replaces the line said last by `rewrite`; "" takes it away. Only where `live`. */
  rewrite(line: string): void;
  data(text: string): void;
  /** People watch: a line can be rewritten. */
  live: boolean;
}

/** The part of the process that a terminal needs. */
export interface ProcessStreams {
  stdout: { write(text: string): unknown };
  stderr: { write(text: string): unknown; isTTY?: boolean };
  env: Record<string, string | undefined>;
}

/** Colours only on a terminal that has them, and none when NO_COLOR is set (no-color.org). */
export function processTerminal({ stdout, stderr, env }: ProcessStreams): Terminal {
  const live = stderr.isTTY === true && env.TERM !== "dumb";
  const colours = pc.createColors(live && !env.NO_COLOR);
  return {
    live,
    say(line = "", style = "plain") {
      const text = printable(line);
      stderr.write(`${style === "plain" ? text : colours[style](text)}\n`);
    },
    rewrite(line) {
      stderr.write(`\r\u001b[K${printable(line)}`);
    },
    data(text) {
      stdout.write(text);
    },
  };
}

/** A thin space groups digits and a true minus stands before them; here ordinary ones do, which every terminal and font has. */
function printable(text: string): string {
  return text
    .replaceAll("\u202f", " ")
    .replaceAll("\u2212", "-")
    .replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff]/gu, "?");
}

/** Said at the end of every run; the report has the cautions in full. */
export const CAUTION =
  "A planning aid built on the numbers it is given; it sets no limit and no setting. Animal welfare and people's safety come first: " +
  "the law at the site, the official veterinarian and licensed practice decide. Verify against the real line.";
