import { scaleLinear, select } from "d3";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { DayCourse } from "../../../sim/day/course/index.ts";
import { formatDecimals } from "../../../sim/text/units/index.ts";
import { clockTicksFor, type Paint, type Texture, textureFill, wrapText } from "../../frame/index.ts";
import { stepBandPath, stepPath } from "../../marks/index.ts";
import { breaksOf } from "../plan/breaksOf.ts";
import { type StripRow, sectionRows, stageRows } from "../strips/stripRows.ts";
import { useWidth } from "./hooks.ts";
import * as state from "./state.ts";

/** One look per state, in the order of STATES. */
const LOOKS: readonly { paint: Paint; texture: Texture }[] = [
  { paint: "working", texture: "plain" },
  { paint: "blocked", texture: "rising" },
  { paint: "starved", texture: "dots" },
  { paint: "noCrew", texture: "level" },
  { paint: "down", texture: "plain" },
  { paint: "onBreak", texture: "plain" },
];
const GUTTER = 150;
const RIGHT = 44;
const CURVE = 30;
/** What the positions did, and above it when the station was the bottleneck. */
const BAND = 9;
const BAR = 4;
const GAP = 12;
/** Three lines of words beside the curve. */
const MIN_ROW = 52;

interface Pair {
  base: StripRow;
  variant: StripRow | null;
}

/** What happened so far, station by station: what waited, and what the positions did; the plan above, the variant below. */
export function Strips() {
  const { ref, width } = useWidth<HTMLDivElement>();
  const base = state.courses.base.value;
  const variant = state.courses.variant.value;
  return (
    <section class="strips" aria-label="What happened so far">
      <h2>What happened so far</h2>
      <p class="small">
        Each curve counts what waits before a station or is inside it: grey for today's plan, blue for the variant. The
        number on the right is the day's highest; the dashed line is the number of places. The bands below show what the
        positions did, in the colours of the legend: today's plan above, the variant below. A blue bar on a band means
        that the station was the bottleneck (pale: the bottleneck was moving to or from it).
      </p>
      <div ref={ref}>
        {base !== null && variant !== null && width > 0 && <Drawing base={base} variant={variant} width={width} />}
      </div>
    </section>
  );
}

function Drawing({ base, variant, width }: { base: DayCourse; variant: DayCourse; width: number }) {
  const end = Math.max(base.record.finishSeconds, variant.record.finishSeconds);
  const gutter = width < 620 ? 96 : GUTTER;
  const plot = width - gutter - RIGHT;
  const pairs = useMemo(
    () => pairsOf(base, variant, { end, bins: Math.max(40, Math.floor(plot / 3)) }),
    [base, variant, end, plot],
  );
  const time = scaleLinear()
    .domain([0, end])
    .range([gutter, width - RIGHT]);
  const heights = pairs.map((pair) => rowHeight(pair, gutter));
  const height = heights.reduce((sum, each) => sum + each, 0) + 26;
  const clip = useRef<SVGRectElement>(null);
  const cursor = useRef<SVGPathElement>(null);
  useEffect(
    () =>
      state.clock.watch((seconds) => {
        const x = time(seconds);
        clip.current?.setAttribute("width", Math.max(0, x - gutter).toFixed(1));
        cursor.current?.setAttribute("d", `M${x.toFixed(1)},0V${height - 22}`);
      }),
    [end, width, height],
  );
  let y = 4;
  const start = base.record.startClockSeconds;
  return (
    <svg class="strip-rows" width={width} height={height} role="img" aria-label={altText(pairs)}>
      <defs>
        <clipPath id="so-far">
          <rect ref={clip} x={gutter} y={0} width={0} height={height} />
        </clipPath>
      </defs>
      <Textures />
      {breaksOf(state.soundPlan.value, start).map(({ name, fromSeconds, toSeconds }) => (
        <rect
          key={`${name} ${fromSeconds}`}
          class="pause"
          x={time(fromSeconds)}
          width={Math.max(1, time(toSeconds) - time(fromSeconds))}
          height={height - 22}
        />
      ))}
      {pairs.map((pair, index) => {
        const top = y;
        y += heights[index]!;
        return <Row key={pair.base.key} pair={pair} time={time} end={end} top={top} width={width} />;
      })}
      {clockTicksFor(time, start).map((tick) => (
        <text key={tick.value} class="small" x={time(tick.value)} y={height - 8} text-anchor="middle">
          {tick.text.split(" ")[0]}
        </text>
      ))}
      <path ref={cursor} class="cursor-line" />
    </svg>
  );
}

function pairsOf(base: DayCourse, variant: DayCourse, binning: { end: number; bins: number }): Pair[] {
  const rows = (course: DayCourse) => [...stageRows(course, binning), ...sectionRows(course, binning)];
  const other = variant === base ? null : new Map(rows(variant).map((row) => [row.key, row]));
  return rows(base)
    .map((row) => ({ base: row, variant: other?.get(row.key) ?? null }))
    .filter(({ base: row, variant: changed }) => row.most > 0 || row.shares !== null || (changed?.most ?? 0) > 0);
}

/** Name and what is counted, in the lines that a gutter holds; the line below the last one. */
function wordsOf({ name, what }: StripRow, gutter: number): { name: string[]; what: string[]; height: number } {
  const lines = { name: wrapText(name, gutter - 14, 12, 2, true), what: wrapText(what, gutter - 14, 11, 3) };
  return { ...lines, height: 12 * (lines.name.length + lines.what.length) + 6 };
}

function rowHeight({ base, variant }: Pair, gutter: number): number {
  const bands = base.shares === null ? 0 : variant === null ? BAR + BAND : 2 * (BAR + BAND) + 2;
  return Math.max(MIN_ROW, wordsOf(base, gutter).height + 4, CURVE + (bands > 0 ? bands + 3 : 0) + GAP);
}

type Scale = (value: number) => number;

function Row({ pair, time, end, top, width }: { pair: Pair; time: Scale; end: number; top: number; width: number }) {
  const { base, variant } = pair;
  const most = Math.max(1, base.most, variant?.most ?? 0);
  const floor = top + CURVE;
  const heads = scaleLinear()
    .domain([0, most])
    .range([floor, top + 4]);
  const left = time(0);
  const words = wordsOf(base, left);
  const bandTop = floor + 3;
  const places = base.places !== null && base.places <= 2 * most ? base.places : null;
  return (
    <g>
      {words.name.map((line, index) => (
        <text key={line} class="row-name" x={2} y={top + 13 + index * 12}>
          {line}
        </text>
      ))}
      {words.what.map((line, index) => (
        <text key={line} class="small" x={2} y={top + 14 + (words.name.length + index) * 12}>
          {line}
        </text>
      ))}
      <path class="axis" d={`M${left},${floor}H${time(end)}`} />
      <text class="small" x={width - RIGHT + 6} y={top + 12}>
        {formatDecimals(most, 0)}
      </text>
      {places !== null && <path class="places" d={`M${left},${heads(Math.min(most, places))}H${time(end)}`} />}
      <g clip-path="url(#so-far)">
        {variant !== null && <path class="curve variant thin" d={curveOf(variant, end, time, heads)} />}
        <path class="curve base thin" d={curveOf(base, end, time, heads)} />
        <Bar row={base} time={time} y={bandTop + 1} />
        {base.shares !== null && <Band shares={base.shares} end={end} time={time} top={bandTop + BAR} />}
        {variant !== null && <Bar row={variant} time={time} y={bandTop + BAR + BAND + 3} />}
        {variant?.shares && <Band shares={variant.shares} end={end} time={time} top={bandTop + 2 * BAR + BAND + 2} />}
      </g>
    </g>
  );
}

function curveOf({ heads: means }: StripRow, end: number, time: Scale, heads: Scale): string {
  const bins = means.length;
  return stepPath(
    Array.from(means, (_, bin) => time((bin * end) / bins)),
    Array.from(means, heads),
    time(end),
  );
}

function Bar({ row, time, y }: { row: StripRow; time: Scale; y: number }) {
  const path = (sole: boolean) =>
    row.bottleneck
      .filter((span) => span.sole === sole)
      .map(({ from, to }) => `M${time(from).toFixed(1)},${y}H${time(to).toFixed(1)}`)
      .join("");
  return (
    <>
      <path class="bottleneck shifting" d={path(false)} />
      <path class="bottleneck" d={path(true)} />
    </>
  );
}

/** Shares of the positions' time, stacked from below in the order of the states. */
function Band({ shares, end, time, top }: { shares: Float64Array[]; end: number; time: Scale; top: number }) {
  const bins = shares[0]!.length;
  const edges = Array.from({ length: bins + 1 }, (_, bin) => time((bin * end) / bins));
  const below = new Float64Array(bins);
  return (
    <>
      {shares.map((share, index) => {
        const lower = Array.from(below, (sum) => top + BAND * (1 - sum));
        for (let bin = 0; bin < bins; bin++) below[bin]! += share[bin]!;
        const upper = Array.from(below, (sum) => top + BAND * (1 - Math.min(1, sum)));
        return <path key={index} d={stepBandPath(edges, upper, lower)} fill={`url(#state-${index})`} />;
      })}
    </>
  );
}

function Textures() {
  const defs = useRef<SVGDefsElement>(null);
  useEffect(() => {
    const target = select(defs.current!);
    target.selectAll("*").remove();
    for (const [index, { paint, texture }] of LOOKS.entries()) {
      textureFill(target, `state-${index}`, texture, `var(--gambrel-${paint})`, "var(--gambrel-ink)");
    }
  }, []);
  return <defs ref={defs} />;
}

function altText(pairs: readonly Pair[]): string {
  const most = pairs
    .filter(({ base }) => base.key.startsWith("stage"))
    .map(
      ({ base, variant }) => `${base.name} ${base.most}${variant === null ? "" : `, in the variant ${variant.most}`}`,
    );
  return `Most waiting at once, over the whole day. ${most.join("; ")}.`;
}
