import type { Command } from "commander";
import { COMPLETIONS, commandTree, manualPage, manualText } from "../completion/index.ts";
import { programVersion } from "../project.ts";
import type { Terminal } from "../terminal.ts";

/** Prints the script with which a shell completes commands and options. */
export function completionCommand(terminal: Terminal, program: Command, shell: keyof typeof COMPLETIONS): void {
  terminal.data(COMPLETIONS[shell](commandTree(program)));
}

/** Prints the whole manual, or the page for `man`. */
export function manualCommand(terminal: Terminal, program: Command, { page = false }: { page?: boolean }): void {
  const write = page ? manualPage : manualText;
  terminal.data(write(commandTree(program), programVersion()));
}
