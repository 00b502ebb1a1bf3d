import type { CommandEntry } from "../commandTree.ts";
import { manualSections } from "./manualSections.ts";

/** A manual as text: headings at the margin, all else indented. */
export function manualText(commands: readonly CommandEntry[], version: string): string {
  const lines = [`gambrel ${version}`, ""];
  for (const { heading, entries } of manualSections(commands)) {
    lines.push(
      heading,
      ...entries.flatMap(({ term, words }) => [
        ...(term === "" ? [] : [`    ${term}`]),
        ...wrapped(words, term === "" ? 4 : 8),
      ]),
      "",
    );
  }
  return `${lines.join("\n").trimEnd()}\n`;
}

/** The same as a page for `man` (roff with the man macros). */
export function manualPage(commands: readonly CommandEntry[], version: string): string {
  const body = manualSections(commands).flatMap(({ heading, entries }) => [
    `.SH ${heading}`,
    ...entries.flatMap(({ term, words }) =>
      term === "" ? [".PP", escaped(words)] : [".TP", `\\fB${escaped(term)}\\fR`, escaped(words)],
    ),
  ]);
  return `${[`.TH GAMBREL 1 "" "gambrel ${version}"`, ...body].join("\n")}\n`;
}

const WIDTH = 88;

function wrapped(words: string, indent: number): string[] {
  const margin = " ".repeat(indent);
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const last = lines.at(-1);
    if (last === undefined || last.length + word.length + 1 > WIDTH) lines.push(margin + word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

/** A dot or an apostrophe at the start of a line would be a command, a backslash an escape, a hyphen a dash. */
function escaped(text: string): string {
  return text.replaceAll("\\", "\\e").replaceAll("-", "\\-").replace(/^[.']/, "\\&$&");
}
