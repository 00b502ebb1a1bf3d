import type { CommandEntry } from "./commandTree.ts";

/** A completion script for fish. */
export function fishCompletion(commands: readonly CommandEntry[]): string {
  const names = commands.map(({ name }) => name).join(" ");
  const lines = commands.flatMap(({ name, description, options, choices }) => [
    `complete -c gambrel -n "not __fish_seen_subcommand_from ${names}" -f -a ${name} -d ${quoted(description)}`,
    ...options.map(({ long, description, takes, choices }) => {
      const values = choices.length > 0 ? ` -x -a ${quoted(choices.join(" "))}` : takes === null ? "" : " -r";
      const only = `-n "__fish_seen_subcommand_from ${name}"`;
      return `complete -c gambrel ${only} -l ${long.slice(2)}${values} -d ${quoted(description)}`;
    }),
    ...(choices.length === 0
      ? []
      : [`complete -c gambrel -n "__fish_seen_subcommand_from ${name}" -f -a ${quoted(choices.join(" "))}`]),
  ]);
  return `# fish completion for gambrel: gambrel completion fish > ~/.config/fish/completions/gambrel.fish
${lines.join("\n")}
`;
}

function quoted(text: string): string {
  return `'${text.replaceAll("\\", "\\\\").replaceAll("'", "\\'")}'`;
}
