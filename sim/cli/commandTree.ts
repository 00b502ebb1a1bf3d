import type { Command, Option } from "commander";

/** What a shell completes and a manual lists, of one command. */
export interface CommandEntry {
  name: string;
  description: string;
  /** "<plan>", "[file...]". */
  arguments: string[];
  /** Words that its first argument may be; empty where it is a file or a text. */
  choices: readonly string[];
  options: OptionEntry[];
  examples: readonly Example[];
}

/** A command line, and what it is for. */
export type Example = readonly [line: string, words: string];

export interface OptionEntry {
  /** "--out". */
  long: string;
  /** "-h", or null. */
  short: string | null;
  /** "<folder>", or null where it takes nothing. */
  takes: string | null;
  description: string;
  choices: readonly string[];
  /** In words; null where there is none. */
  standard: string | null;
}

const EXAMPLES = new WeakMap<Command, readonly Example[]>();

/** Shows examples at the end of the command's --help, and keeps them for the manual. */
export function withExamples(command: Command, examples: readonly Example[]): void {
  EXAMPLES.set(command, examples);
  const lines = examples.flatMap(([line, words]) => [`  ${line}`, `      ${words}`]);
  command.addHelpText("after", `\nExamples:\n${lines.join("\n")}`);
}

/** The commands of the command line, as they are: completion and manual cannot fall behind. */
export function commandTree(program: Command): CommandEntry[] {
  return program.commands.map((command) => ({
    name: command.name(),
    description: command.description(),
    arguments: command.registeredArguments.map((argument) => {
      const word = `${argument.name()}${argument.variadic ? "..." : ""}`;
      return argument.required ? `<${word}>` : `[${word}]`;
    }),
    choices: command.registeredArguments[0]?.argChoices ?? [],
    options: command.options.filter(({ hidden }) => !hidden).map(optionEntry),
    examples: EXAMPLES.get(command) ?? [],
  }));
}

function optionEntry(option: Option): OptionEntry {
  const takes = /[<[].*[>\]]/.exec(option.flags)?.[0] ?? null;
  const { defaultValue, defaultValueDescription } = option;
  return {
    long: option.long ?? "",
    short: option.short ?? null,
    takes,
    description: option.description,
    choices: option.argChoices ?? [],
    standard: takes === null || defaultValue === undefined ? null : (defaultValueDescription ?? String(defaultValue)),
  };
}
