import { scaleLinear } from "d3";
import { useEffect, useRef } from "preact/hooks";
import type { DayCourse } from "../../../sim/day/course/index.ts";
import { formatClock, formatDecimals } from "../../../sim/text/units/index.ts";
import { clockTicksFor, isolated, textWidth } from "../../frame/index.ts";
import { stepPath } from "../../marks/index.ts";
import { breaksOf } from "../plan/breaksOf.ts";
import { binMeans } from "../strips/binSteps.ts";
import { useWidth } from "./hooks.ts";
import * as state from "./state.ts";

const HEIGHT = 92;
const TOP = 18;
const FLOOR = 68;
const SIDE = 22;
const DONE = 2;

/** The whole day as a strip: heads done in both lines, breaks, the end of the shift; drag or press keys to move in it. */
export function DayStrip() {
  const { ref, width } = useWidth<HTMLDivElement>();
  const base = state.courses.base.value;
  const variant = state.courses.variant.value;
  return (
    <div class="day-strip" ref={ref}>
      {base !== null && variant !== null && width > 0 && <Strip base={base} variant={variant} width={width} />}
    </div>
  );
}

function Strip({ base, variant, width }: { base: DayCourse; variant: DayCourse; width: number }) {
  const { startClockSeconds, shiftEndSeconds } = base.record;
  const end = Math.max(base.record.finishSeconds, variant.record.finishSeconds);
  const time = scaleLinear()
    .domain([0, end])
    .range([SIDE, width - SIDE]);
  const most = Math.max(1, base.record.heads.arrived, variant.record.heads.arrived);
  const heads = scaleLinear().domain([0, most]).range([FLOOR, TOP]);
  const pauses = breaksOf(state.soundPlan.value, startClockSeconds);
  const cursor = useRef<SVGGElement>(null);
  const slider = useRef<HTMLDivElement>(null);
  useEffect(
    () =>
      state.clock.watch((seconds) => {
        cursor.current?.setAttribute("transform", `translate(${time(seconds).toFixed(1)},0)`);
        slider.current?.setAttribute("aria-valuenow", String(Math.round(seconds)));
        slider.current?.setAttribute("aria-valuetext", formatClock(startClockSeconds + seconds, true));
      }),
    [time, startClockSeconds],
  );
  const drag = (event: PointerEvent) => {
    const box = slider.current!.getBoundingClientRect();
    state.clock.moveTo(time.invert(event.clientX - box.left));
  };
  return (
    <div
      ref={slider}
      class="strip"
      role="slider"
      tabIndex={0}
      aria-label="Time of the day"
      aria-valuemin={0}
      aria-valuemax={Math.round(end)}
      aria-valuenow={0}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        drag(event);
      }}
      onPointerMove={(event) => event.buttons === 1 && drag(event)}
      onKeyDown={moveByKey}
    >
      <svg width={width} height={HEIGHT} aria-hidden="true" focusable="false">
        {pauses.map((pause) => (
          <g key={`${pause.name} ${pause.fromSeconds}`}>
            <rect
              class="pause"
              x={time(pause.fromSeconds)}
              width={Math.max(1, time(pause.toSeconds) - time(pause.fromSeconds))}
              y={TOP}
              height={FLOOR - TOP}
            />
          </g>
        ))}
        {toldBreaks(pauses, time).map(({ words, x }) => (
          <text key={x} class="small" x={x} y={TOP - 5}>
            {isolated(words)}
          </text>
        ))}
        {shiftEndSeconds < end && (
          <g>
            <path class="shift-end" d={`M${time(shiftEndSeconds)},${TOP}V${FLOOR}`} />
            <text class="small halo" x={time(shiftEndSeconds) - 4} y={FLOOR - 18} text-anchor="end">
              shift ends
            </text>
          </g>
        )}
        {clockTicksFor(time, startClockSeconds).map((tick) => (
          <g key={tick.value}>
            <path class="tick" d={`M${time(tick.value)},${FLOOR}v4`} />
            <text class="small" x={time(tick.value)} y={FLOOR + 17} text-anchor="middle">
              {tick.text.split(" ")[0]}
            </text>
          </g>
        ))}
        <path class="axis" d={`M${SIDE},${FLOOR}H${width - SIDE}`} />
        {variant !== base && <path class="curve variant" d={curve(variant, end, time, heads, width)} />}
        <path class="curve base" d={curve(base, end, time, heads, width)} />
        <text class="small halo" x={width - SIDE} y={FLOOR - 5} text-anchor="end">
          heads done, up to {formatDecimals(most, 0)}
        </text>
        <g ref={cursor} class="cursor">
          <path d={`M0,${TOP - 8}V${FLOOR + 6}`} />
          <circle cy={TOP - 8} r={6} />
        </g>
      </svg>
    </div>
  );
}

/** Names of breaks that begin where the one before is still being read stand in its words. */
function toldBreaks(pauses: readonly { name: string; fromSeconds: number }[], time: Scale) {
  const told: { words: string; x: number }[] = [];
  for (const { name, fromSeconds } of [...pauses].sort((a, b) => a.fromSeconds - b.fromSeconds)) {
    const [before, x] = [told.at(-1), time(fromSeconds)];
    if (before !== undefined && before.x + textWidth(before.words, 11) + 6 > x) before.words += `, ${name}`;
    else told.push({ words: name, x });
  }
  return told;
}

type Scale = (value: number) => number;

function curve(course: DayCourse, end: number, time: Scale, heads: Scale, width: number): string {
  const bins = Math.max(50, Math.floor(width / 2));
  const means = binMeans(course.counts, DONE, end, bins);
  return stepPath(
    Array.from(means, (_, bin) => time((bin * end) / bins)),
    Array.from(means, heads),
    time(end),
  );
}

const STEPS: Record<string, number> = {
  ArrowLeft: -60,
  ArrowRight: 60,
  ArrowDown: -60,
  ArrowUp: 60,
  PageDown: -600,
  PageUp: 600,
  Home: -Infinity,
  End: Infinity,
};

function moveByKey(event: KeyboardEvent): void {
  const step = STEPS[event.key];
  if (step === undefined) return;
  event.preventDefault();
  state.clock.moveTo(state.clock.seconds + step);
}
