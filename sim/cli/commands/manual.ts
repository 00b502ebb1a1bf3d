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
  { term: "2", words: "Bad input (arguments, plan, study, folder): every fault is listed, nothing is written." },
  {
    term: "129, 130, 143",
    words: "Stopped by the terminal's end, Ctrl-C or SIGTERM; the days done are kept for --resume.",
  },
];

const ENVIRONMENT = [
  { term: "NO_COLOR", words: "No colours, when set." },
  { term: "GAMBREL_DEBUG", words: "1 shows where in the program a failure arose." },
  { term: "GAMBREL_QUEUE_PASSWORD", words: "Password of the queue; it is never shown." },
];

const FILES = [
  {
    term: "runs/NAME",
    words: "The folder of a run: report.html, charts, results.json, tables, the plan and study as read.",
  },
  { term: "runs/NAME.partial", words: "Days of a run that was stopped; --resume goes on with them." },
];

const EXAMPLES = [
  { term: "gambrel check plant.json", words: "Every fault of a plan, with its place and the remedy." },
  { term: "gambrel day plant.json --out monday", words: "One day with its report." },
  { term: "gambrel study buffers.json --replications 40", words: "A study on every core of this machine." },
  { term: "gambrel study buffers.json --queue redis://host", words: "The same on the workers of a queue." },
];

/** Prints the whole manual, or the page for `man`. */
export function manualCommand(terminal: Terminal, program: Command, { page = false }: { page?: boolean }): void {
  const write = page ? manualPage : manualText;
  terminal.data(write(commandTree(program), programVersion()));
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
          "Reads a plan (a plant in JSON) or a study (a question asked of plans), simulates days from a seed, and writes " +
            "figures with intervals, tables, pictures and a report. Words for people go to standard error, data to standard output.",
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
    { heading: "EXAMPLES", entries: EXAMPLES },
  ];
}

function commandEntry({ name, description, arguments: words }: CommandEntry): { term: string; words: string } {
  return { term: ["gambrel", name, ...words, "[options]"].join(" "), words: `${description}.` };
}

function optionSection({ name, options }: CommandEntry): ManualSection {
  return {
    heading: `OPTIONS OF ${name.toUpperCase()}`,
    entries: options.map(({ long, short, takes, description, standard, choices }) => ({
      term: [short, [long, takes].filter((part) => part !== null).join(" ")].filter((part) => part !== null).join(", "),
      words: [
        `${description}.`,
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
