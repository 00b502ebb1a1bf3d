import { useEffect, useRef } from "preact/hooks";
import { BODY, drawPosition, HOOK, PENNANT, POINTER, STATE_LABELS } from "../scene/looks.ts";
import type { Pen } from "../scene/pen.ts";
import { SvgPen } from "../scene/svgPen.ts";
import { shownTheme } from "./theme.ts";

const SAMPLES: { label: string; draw: (pen: Pen) => void }[] = [
  ...STATE_LABELS.map((label, state) => ({
    label,
    draw: (pen: Pen) => {
      drawPosition(pen, { x: 9, y: 19, scale: 1 }, { state, isManned: true });
      drawPosition(pen, { x: 27, y: 19, scale: 1 }, { state, isManned: false });
    },
  })),
  { label: "head that waits or moves", draw: (pen) => drawHead(pen, "rule") },
  { label: "head being worked on", draw: (pen) => drawHead(pen, "working") },
  { label: "head done, cannot move on", draw: (pen) => drawHead(pen, "blocked") },
  {
    label: "near a time limit; filled: limit broken",
    draw: (pen) => {
      pen.shape(PENNANT, 8, 20, { fill: "beyond", stroke: "limit", width: 1.4 });
      pen.shape(PENNANT, 22, 20, { fill: "limit", stroke: "limit", width: 1.4 });
    },
  },
  {
    label: "bottleneck now; outlined: it is moving",
    draw: (pen) => {
      pen.shape(POINTER, 9, 17, { fill: "line", stroke: "line" });
      pen.shape(POINTER, 26, 17, { fill: "paper", stroke: "line", width: 1.6 });
    },
  },
];

function drawHead(pen: Pen, fill: "rule" | "working" | "blocked"): void {
  pen.shape(HOOK, 14, 1, { stroke: "muted" });
  pen.shape(BODY, 14, 1, { fill, stroke: "ink", width: 0.8 });
}

/** What the marks on the rail mean. */
export function Legend() {
  return (
    <ul class="legend" aria-label="What the marks mean">
      {SAMPLES.map(({ label, draw }) => (
        <li key={label}>
          <Sample draw={draw} />
          {label}
        </li>
      ))}
    </ul>
  );
}

function Sample({ draw }: { draw: (pen: Pen) => void }) {
  const group = useRef<SVGGElement>(null);
  const theme = shownTheme.value;
  useEffect(() => {
    group.current!.replaceChildren();
    draw(new SvgPen(group.current!, theme));
  }, [draw, theme]);
  return (
    <svg width={36} height={24} aria-hidden="true" focusable="false">
      <g ref={group} />
    </svg>
  );
}
