import type { CommandEntry } from "./commandTree.ts";

/** A completion script for bash. */
export function bashCompletion(commands: readonly CommandEntry[]): string {
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
