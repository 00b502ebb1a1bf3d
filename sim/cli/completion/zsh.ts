import type { CommandEntry, OptionEntry } from "../commandTree.ts";

/** A completion script for zsh. */
export function zshCompletion(commands: readonly CommandEntry[]): string {
  const names = commands.map(({ name, description }) => `    ${quoted(`${name}:${description}`)}`);
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
  if (takes === null) return quoted(`${long}[${words}]`);
  const action = choices.length > 0 ? `(${choices.join(" ")})` : "_files";
  return quoted(`${long}[${words}]:${takes.replace(/[<>[\]:]/g, "")}:${action}`);
}

function rest({ choices }: CommandEntry): string {
  return choices.length > 0 ? quoted(`1: :(${choices.join(" ")})`) : "'*: :_files'";
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`;
}
