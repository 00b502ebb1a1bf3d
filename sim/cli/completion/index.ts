/** What is made of the commands' own descriptions: completion for shells, and the manual. */

export { commandTree } from "../commandTree.ts";
export { COMPLETIONS } from "./completions.ts";
export { manualPage, manualText } from "./manual.ts";
