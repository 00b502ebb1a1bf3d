import type { Paint } from "../../frame/index.ts";
import { CROSS, MACHINE, PERSON } from "./glyphs.ts";
import type { Pen } from "./pen.ts";

/** How a position looks in each state, in the order of STATES; told apart by fill, outline and mark, not by colour alone. */
const LOOKS: readonly { fill: Paint | "none"; stroke: Paint; dash: readonly number[]; mark: string }[] = [
  { fill: "working", stroke: "ink", dash: [], mark: "" },
  { fill: "blocked", stroke: "ink", dash: [], mark: "M-6.5,-4H6.5" },
  { fill: "none", stroke: "muted", dash: [], mark: "" },
  { fill: "none", stroke: "muted", dash: [2.2, 2.2], mark: "" },
  { fill: "down", stroke: "ink", dash: [], mark: CROSS },
  { fill: "onBreak", stroke: "rule", dash: [1, 2.5], mark: "" },
];

export const STATE_LABELS = [
  "working",
  "blocked, no place to go",
  "starved, nothing to do",
  "nobody free",
  "down",
  "on break",
] as const;

/** A position below the rail: a person, or a machine, in its state; the origin is the middle of its lower edge. */
export function drawPosition(pen: Pen, x: number, y: number, state: number, isManned: boolean, scale: number): void {
  const look = LOOKS[state]!;
  const style = { fill: look.fill, stroke: look.stroke, width: 1, dash: look.dash };
  pen.shape(isManned ? PERSON : MACHINE, x, y, style, scale);
  if (look.mark === "") return;
  const onDark = state === 4;
  pen.shape(look.mark, x, y, { stroke: onDark ? "paper" : "ink", width: 1.6 }, scale);
}
