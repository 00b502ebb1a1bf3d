import { type ChartFrame, drawText, LINE_HEIGHT, wrapText } from "../frame/index.ts";

/** Gutters of a narrow picture of panels: the ends of the value axis at the left, nothing at the right. */
export const PANEL_GUTTERS = { left: 26, right: 8 };

/** What a narrow picture says above a panel: name and figures. */
interface PanelHead {
  name: string;
  notes: readonly string[];
}

interface HeadLine {
  text: string;
  bold: boolean;
}

const MAX_LINES = 4;

function linesOf(frame: ChartFrame, { name, notes }: PanelHead): HeadLine[] {
  const room = frame.right - frame.left;
  const wrapped = (text: string, bold: boolean) =>
    text === "" ? [] : wrapText(text, room, 11, MAX_LINES, bold).map((line) => ({ text: line, bold }));
  return [...wrapped(name, true), ...notes.flatMap((note) => wrapped(note, false))];
}

/** Tops of panels that stand below each other (pixels): in a narrow picture with room for their words above. */
export function panelTops(
  frame: ChartFrame,
  heads: readonly PanelHead[],
  { top, height, gap }: { top: number; height: number; gap: number },
): { tops: number[]; bottom: number } {
  let next = top;
  const tops = heads.map((head) => {
    if (frame.narrow) next += linesOf(frame, head).length * LINE_HEIGHT + 2;
    const place = next;
    next += height + gap;
    return place;
  });
  return { tops, bottom: next - gap };
}

/** The words above a panel of a narrow picture, whose plot begins at `top`. */
export function drawPanelHead(frame: ChartFrame, head: PanelHead, top: number): void {
  const lines = linesOf(frame, head);
  const halo = frame.colour("paper");
  lines.forEach(({ text, bold }, i) => {
    const y = top - 6 - (lines.length - 1 - i) * LINE_HEIGHT;
    drawText(frame.body, frame.left, y, text, { bold, halo, ...(bold ? {} : { fill: frame.colour("muted") }) });
  });
}
