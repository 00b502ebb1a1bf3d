import { type InputKind, inputKind } from "../asked/plan/index.ts";
import { BadInput } from "./badInput.ts";
import type { InputFile } from "./inputFile.ts";

const KINDS: Record<InputKind, { words: string; command: string; name: string }> = {
  plan: { words: "is a plan", command: 'run it with "gambrel day"', name: "a plan" },
  study: { words: "is a study", command: 'run it with "gambrel study"', name: "a study" },
  demand: { words: "is a demand", command: 'size a plan for it with "gambrel size"', name: "a demand" },
  options: {
    words: "is a file of options",
    command: 'compare them with "gambrel options"',
    name: "a file of options",
  },
  improve: {
    words: "asks for an improvement",
    command: 'search for it with "gambrel improve"',
    name: "a file that asks for an improvement",
  },
};

/** A file that shows every sign of another kind than the one wanted is told in one line, not by all that it lacks. */
export function refuseOtherKind({ path, json }: InputFile, wanted: InputKind): void {
  const kind = inputKind(json);
  if (kind === null || kind === wanted) return;
  const { words, command } = KINDS[kind];
  throw new BadInput([`${path}: this ${words}; ${command}, or name ${KINDS[wanted].name}.`]);
}
