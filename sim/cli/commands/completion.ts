import type { Command } from "commander";
import { type CommandEntry, commandTree, type OptionEntry } from "../commandTree.ts";
import type { Terminal } from "../terminal.ts";

/** The shells that can be served, each with the writer of its script. */
export const COMPLETIONS = { bash: bashCompletion, zsh: zshCompletion, fish: fishCompletion };

/** Prints the script with which a shell completes commands and options. */
export function completionCommand(terminal: Terminal, program: Command, shell: keyof typeof COMPLETIONS): void {
  terminal.data(COMPLETIONS[shell](commandTree(program)));
}

/** A completion script for zsh. */
function zshCompletion(commands: readonly CommandEntry[]): string {
  const names = commands.map(({ name, description }) => `    ${zshQuoted(`${name}:${description}`)}`);
  const cases = commands.map((command) => {
    const words = [...command.options.map(option), "'--help[show its options]'", rest(command)];
    return `        ${command.name}) _arguments ${words.join(" ")} ;;`;
  });
  return `#compdef gambrel
# zsh completion for gambrel: gambrel completion zsh > a folder of $fpath, as _gambrel
_gambrel() {
  local -a commands
  commands=(
${names.join("\n")}
  )
  _arguments -C '1: :->command' '*:: :->rest'
  case $state in
    command) _describe command commands ;;
    rest)
      case $words[1] in
${cases.join("\n")}
      esac ;;
  esac
}
_gambrel "$@"
`;
}

function option({ long, description, takes, choices }: OptionEntry): string {
  const words = description.replace(/[[\]:]/g, " ");
  if (takes === null) return zshQuoted(`${long}[${words}]`);
  const action = choices.length > 0 ? `(${choices.join(" ")})` : "_files";
  return zshQuoted(`${long}[${words}]:${takes.replace(/[<>[\]:]/g, "")}:${action}`);
}

function rest({ choices }: CommandEntry): string {
  return choices.length > 0 ? zshQuoted(`1: :(${choices.join(" ")})`) : "'*: :_files'";
}

function zshQuoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`;
}

/** A completion script for fish. */
function fishCompletion(commands: readonly CommandEntry[]): string {
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

/** A completion script for bash. */
function bashCompletion(commands: readonly CommandEntry[]): string {
  const cases = commands.map(({ name, options, choices }) => {
    const words = [...options.map(({ long }) => long), "--help", ...choices].join(" ");
    return `    ${name}) words="${words}" ;;`;
  });
  return `# bash completion for gambrel: source <(gambrel completion bash)
_gambrel() {
  local current="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD - 1]}" words=""
  case "$before" in
${optionChoices(commands)}
  esac
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY=($(compgen -W "${commands.map(({ name }) => name).join(" ")} --help --version" -- "$current"))
    return
  fi
  case "\${COMP_WORDS[1]}" in
${cases.join("\n")}
  esac
  COMPREPLY=($(compgen -W "$words" -- "$current") $(compgen -f -- "$current"))
}
complete -o filenames -F _gambrel gambrel
`;
}

/** After an option with choices only these are offered. */
function optionChoices(commands: readonly CommandEntry[]): string {
  const known = new Map(
    commands.flatMap(({ options }) => options.map(({ long, choices }) => [long, choices] as const)),
  );
  return [...known]
    .filter(([, choices]) => choices.length > 0)
    .map(([long, choices]) => `    ${long}) COMPREPLY=($(compgen -W "${choices.join(" ")}" -- "$current")); return ;;`)
    .join("\n");
}
