import type { Paint } from "../../frame/index.ts";
import type { Pen } from "./pen.ts";

// Shapes of the picture, drawn around their own origin. Pixels at scale 1.

/** A head on its hook: the origin is on the rail; the body hangs below it. Some 6 wide, 22 high. */
export const HOOK = "M0,0v5";
export const BODY = "M0,4C2.4,6 3.2,9.5 3.2,13.5C3.2,18 1.9,21 0,21C-1.9,21 -3.2,18 -3.2,13.5C-3.2,9.5 -2.4,6 0,4Z";

/** Somebody who works: head and shoulders; the origin is the middle of the lower edge. 13 wide, 15 high. */
export const PERSON =
  "M-6.5,0C-6.5,-5 -4,-7.2 0,-7.2C4,-7.2 6.5,-5 6.5,0ZM-3.4,-11.6a3.4,3.4 0 1 0 6.8,0a3.4,3.4 0 1 0 -6.8,0Z";

/** A machine: a block with a notch where the head passes. 14 wide, 13 high. */
export const MACHINE = "M-7,0V-13H-3V-8.5H3V-13H7V0Z";

/** Struck through: stopped. */
export const CROSS = "M-5,-11.5L5,-1.5M5,-11.5L-5,-1.5";

/** A small flag on a pole whose foot is the origin. */
export const PENNANT = "M0,0V-16L9,-12.5L0,-9";

/** Points down at the station; the origin is the tip. */
export const POINTER = "M0,0L-7,-9H7Z";

/** A lorry seen from the side, loading bed to the left; the origin is the lower left corner. 50 wide, 24 high. */
export const LORRY = "M0,-5V-22H33V-5ZM35,-5V-17H42L48,-11V-5Z";
export const WHEELS =
  "M6,-4a3.5,3.5 0 1 0 7,0a3.5,3.5 0 1 0 -7,0M22,-4a3.5,3.5 0 1 0 7,0a3.5,3.5 0 1 0 -7,0M38,-4a3.5,3.5 0 1 0 7,0a3.5,3.5 0 1 0 -7,0";

/** A bin with its upper edge open; the origin is the middle of its floor. 10 wide, 13 high. */
export const BIN = "M-5,-13L-4,0H4L5,-13";

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
  "cannot pass its head on",
  "waits for heads",
  "nobody free",
  "broken down",
  "on break",
] as const;

/** A position below the rail: a person, or a machine, in its state; the origin is the middle of its lower edge. */
export function drawPosition(
  pen: Pen,
  { x, y, scale }: { x: number; y: number; scale: number },
  { state, isManned }: { state: number; isManned: boolean },
): void {
  const look = LOOKS[state]!;
  const style = { fill: look.fill, stroke: look.stroke, width: 1, dash: look.dash };
  pen.shape(isManned ? PERSON : MACHINE, x, y, style, scale);
  if (look.mark === "") return;
  const onDark = state === 4;
  pen.shape(look.mark, x, y, { stroke: onDark ? "paper" : "ink", width: 1.6 }, scale);
}
