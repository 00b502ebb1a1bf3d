import { textWidth } from "../../frame/index.ts";
import { SIZE, type StagePlace } from "./layout.ts";
import { POINTER } from "./looks.ts";
import type { Pen } from "./pen.ts";
import type { Scene } from "./scene.ts";

/** Filled where the stage is the sole bottleneck, outlined while the bottleneck shifts to or from it. */
export function drawBottleneck(pen: Pen, scene: Scene, place: StagePlace, top: number): void {
  if (!scene.bottleneck.includes(place.stage)) return;
  const s = scene.layout.scale;
  const x = middleOf(place);
  const look =
    scene.bottleneck.length > 1
      ? ({ fill: "paper", stroke: "line", width: 1.6 } as const)
      : ({ fill: "line", stroke: "line" } as const);
  pen.rect(
    { x: place.cell.from, y: top + (SIZE.rail - 4) * s, width: place.cell.to - place.cell.from, height: 8 * s },
    look,
    4 * s,
  );
  pen.shape(POINTER, x, top + 25 * s, look, s);
  if (!isTold(scene, place)) return;
  pen.text(x, top + 13 * s, wordsOf(scene), { size: SIZE.text * s, bold: true, fill: "line", anchor: "middle" });
}

/** What the pointers to the bottleneck take up right above the rails; their words stand higher. */
export function pointerStretches(scene: Scene): { from: number; to: number; y: number }[] {
  const { layout, bottleneck } = scene;
  const reach = 9 * layout.scale;
  return bottleneck.flatMap((stage) => {
    const place = layout.stages[stage];
    if (!place || place.look === "siding") return [];
    const y = layout.rows[place.row]!.y + SIZE.rail * layout.scale;
    return [{ from: middleOf(place) - reach, to: middleOf(place) + reach, y }];
  });
}

/** On a short chain its name makes way for the bottleneck's words above one of its stations. */
export function isNameCovered(scene: Scene, { stage, label, labelX, waiting }: StagePlace): boolean {
  const { layout, course, bottleneck } = scene;
  const length = textWidth(label.join(" "), SIZE.text * layout.scale, true);
  const from = labelX === waiting.from ? labelX : labelX - length;
  const reach = halfWidth(scene);
  return bottleneck.some((other) => {
    const on = layout.stages[other];
    if (!on || other === stage || course.sketch.stages[other]!.chain !== course.sketch.stages[stage]!.chain)
      return false;
    return middleOf(on) + reach > from && middleOf(on) - reach < from + length;
  });
}

/** Between stages that stand close together the words stand once, above the first; the others have the pointer alone. */
function isTold(scene: Scene, place: StagePlace): boolean {
  const room = 2 * halfWidth(scene);
  const rivals = scene.bottleneck.flatMap((stage) => {
    const other = scene.layout.stages[stage];
    return other && other.row === place.row && other.look !== "siding" ? [middleOf(other)] : [];
  });
  let told = -Infinity;
  for (const middle of rivals.sort((a, b) => a - b)) {
    if (middle - told < room) continue;
    told = middle;
    if (middle === middleOf(place)) return true;
  }
  return place.look === "siding";
}

function middleOf({ cell }: StagePlace): number {
  return (cell.from + cell.to) / 2;
}

function wordsOf({ bottleneck }: Scene): string {
  return bottleneck.length > 1 ? "bottleneck moving" : "bottleneck";
}

/** Half the words' width, and a little air. */
function halfWidth(scene: Scene): number {
  return textWidth(wordsOf(scene), SIZE.text * scene.layout.scale, true) / 2 + 4;
}
