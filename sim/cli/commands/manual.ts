import type { Command } from "commander";
import { DANGERS } from "../../../viz/report/cautions.ts";
import { type CommandEntry, commandTree } from "../commandTree.ts";
import { programVersion } from "../project.ts";
import { CAUTION, type Terminal } from "../terminal.ts";

const WIDTH = 88;

/** A heading with what stands below it; an entry without a term is a paragraph. */
interface ManualSection {
  heading: string;
  entries: { term: string; words: string }[];
}

const paragraph = (words: string) => ({ term: "", words });

const EXIT_STATUS = [
  { term: "0", words: "Done." },
  { term: "1", words: "Failed: one sentence says why." },
  { term: "2", words: "Bad input (arguments, plan, study, folder): all faults are listed, nothing is written." },
  {
    term: "129, 130, 143",
    words: "Stopped: the terminal was closed, Ctrl-C, SIGTERM. The simulated days are kept; continue with --resume.",
  },
];

const ENVIRONMENT = [
  { term: "NO_COLOR", words: "Set to anything, switches colours off." },
  { term: "GAMBREL_DEBUG", words: "Set to 1, shows where in the program a failure arose." },
  { term: "GAMBREL_QUEUE_PASSWORD", words: "Password of the queue; it is never shown." },
];

const FILES = [
  {
    term: "runs/NAME",
    words: "Folder of a run: report.html, charts, tables, results.json, and the plan and study as they were read.",
  },
  { term: "runs/NAME.partial", words: "Days of a run that was stopped; --resume continues with them." },
];

/** Prints the whole manual, or the page for `man`. */
export function manualCommand(terminal: Terminal, program: Command, { page = false }: { page?: boolean }): void {
  const write = page ? manualPage : manualText;
  terminal.data(write(commandTree(program), programVersion()));
}

/** "your plan; reload it" -> "Your plan; reload it." */
function sentence(words: string): string {
  return `${words[0]!.toUpperCase()}${words.slice(1)}.`;
}

/** The manual's text, the same for a screen and for `man`. */
export function manualSections(commands: readonly CommandEntry[]): ManualSection[] {
  return [
    {
      heading: "NAME",
      entries: [paragraph("gambrel - simulates rabbit (small-animal) slaughter and processing lines")],
    },
    {
      heading: "DESCRIPTION",
      entries: [
        paragraph(
          "Reads a plan (a plant in JSON) or a question about plans, simulates many days from a seed, and writes figures with " +
            "their ranges, tables, pictures and a report. Messages go to standard error, data to standard output.",
        ),
        paragraph(CAUTION),
      ],
    },
    { heading: "CAUTIONS", entries: DANGERS.map(paragraph) },
    { heading: "COMMANDS", entries: commands.map(commandEntry) },
    ...commands.filter(({ options }) => options.length > 0).map(optionSection),
    { heading: "EXIT STATUS", entries: EXIT_STATUS },
    { heading: "ENVIRONMENT", entries: ENVIRONMENT },
    { heading: "FILES", entries: FILES },
    {
      heading: "EXAMPLES",
      entries: commands.flatMap(({ examples }) => examples.map(([term, words]) => ({ term, words: sentence(words) }))),
    },
  ];
}

function commandEntry({ name, description, arguments: words }: CommandEntry): { term: string; words: string } {
  return { term: ["gambrel", name, ...words, "[options]"].join(" "), words: sentence(description) };
}

function optionSection({ name, options }: CommandEntry): ManualSection {
  return {
    heading: `OPTIONS OF ${name.toUpperCase()}`,
    entries: options.map(({ long, short, takes, description, standard, choices }) => ({
      term: [short, [long, takes].filter((part) => part !== null).join(" ")].filter((part) => part !== null).join(", "),
      words: [
        sentence(description),
        ...(choices.length > 0 ? [`One of ${choices.join(", ")}.`] : []),
        ...(standard === null ? [] : [`Default: ${standard}.`]),
      ].join(" "),
    })),
  };
}

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
