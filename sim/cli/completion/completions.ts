import { bashCompletion } from "./bash.ts";
import { fishCompletion } from "./fish.ts";
import { zshCompletion } from "./zsh.ts";

/** The shells that can be served, each with the writer of its script. */
export const COMPLETIONS = { bash: bashCompletion, zsh: zshCompletion, fish: fishCompletion };
