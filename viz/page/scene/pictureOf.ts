import type { DayCourse } from "../../../sim/day/course/index.ts";
import { formatClock } from "../../../sim/text/units/index.ts";
import { FONT_FAMILY, paint } from "../../frame/index.ts";
import { bottleneckAt } from "./bottleneckAt.ts";
import { drawRail } from "./drawRail.ts";
import { indexHeads } from "./headsAt.ts";
import { layoutOf } from "./layout.ts";
import { runningDifference, runningDifferenceWords } from "./runningDifference.ts";
import { SvgPen } from "./svgPen.ts";

const SPACE = "http://www.w3.org/2000/svg";
const WIDTH = 1240;
const SIDE = 20;

export interface PictureParts {
  title: string;
  /** What is changed in the variant, in words; "" for nothing. */
  change: string;
  base: DayCourse;
  variant: DayCourse;
  seconds: number;
  theme: "light" | "dark";
}

/** Both lines at a moment (the plan alone when nothing is changed) as a picture of its own, with its words on it. */
export function pictureOf(
  document: Document,
  { title, change, base, variant, seconds, theme }: PictureParts,
): { svg: SVGSVGElement; width: number; height: number; clock: string } {
  const svg = document.createElementNS(SPACE, "svg") as SVGSVGElement;
  const clock = formatClock(base.record.startClockSeconds + seconds, true);
  const add = () => svg.appendChild(document.createElementNS(SPACE, "g") as SVGGElement);
  const paper = svg.appendChild(document.createElementNS(SPACE, "rect") as SVGRectElement);
  const words = new SvgPen(add(), theme);
  words.text(SIDE, 34, `${title}, ${clock}`, { size: 20, bold: true });
  words.text(
    SIDE,
    56,
    "One simulated day of an invented or planned line. A planning aid: it sets no limits and no machine settings.",
    {
      fill: "muted",
    },
  );
  let y = 80;
  const lines: [string, DayCourse][] = [["Today's plan", base]];
  if (change !== "") lines.push([`The variant: ${change}`, variant]);
  for (const [name, course] of lines) {
    words.text(SIDE, y + 16, name, { size: 15, bold: true });
    const group = add();
    group.setAttribute("transform", `translate(${SIDE},${y + 26})`);
    const layout = layoutOf(course.sketch, WIDTH - 2 * SIDE);
    const at = Math.min(seconds, course.record.finishSeconds);
    const scene = {
      course,
      index: indexHeads(course),
      layout,
      seconds: at,
      bottleneck: bottleneckAt(course, at),
      picked: -1,
    };
    drawRail(new SvgPen(group, theme), scene);
    y += layout.height + 40;
  }
  if (change !== "") {
    words.text(SIDE, y + 10, runningDifferenceWords(runningDifference(base, variant, seconds)), {
      size: 15,
      bold: true,
    });
    y += 26;
  }
  const height = Math.ceil(y + 10);
  for (const [name, value] of Object.entries({ width: WIDTH, height })) {
    svg.setAttribute(name, String(value));
    paper.setAttribute(name, String(value));
  }
  svg.setAttribute("viewBox", `0 0 ${WIDTH} ${height}`);
  svg.setAttribute("font-family", FONT_FAMILY);
  paper.setAttribute("fill", paint(theme, "paper"));
  return { svg, width: WIDTH, height, clock };
}
