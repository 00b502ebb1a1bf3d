import type { PackedReadings, PackedSeries } from "./packedReadings.ts";

/**
 * The script of a report: one time cursor through all pictures of a day, and the values of whatever is pointed at or
 * stepped to. It runs in the reader's browser, so each function below must stand by itself: it may use the others and
 * the browser, and nothing that is imported. Texts are only ever set as text.
 */
export function readerScript(): string {
  const parts = [startReader, startDay, startMarks, showTime, moveCursor, readingsAt, seriesText, valueAt, clockText];
  const rest = [pointedTime, steppedTime, nearestMark, showMark, fill, openForPrint];
  // A bundler that keeps function names wraps some of them in a helper of its own; here it does nothing.
  return `"use strict";(()=>{const __name=(f)=>f;${[...parts, ...rest].map(String).join("\n")}\nstartReader(document);})();`;
}

function startReader(page: Document): void {
  for (const hint of page.querySelectorAll<HTMLElement>(".hint, .cursor")) hint.hidden = false;
  for (const day of page.querySelectorAll<HTMLElement>(".day")) startDay(day);
  for (const plot of page.querySelectorAll<HTMLElement>(".plot:not([data-over-time])")) startMarks(plot);
  openForPrint(page);
}

/** The slider and every picture over the clock of one day move one cursor. */
function startDay(day: HTMLElement): void {
  const slider = day.querySelector<HTMLInputElement>(".cursor input");
  if (slider === null) return;
  const views = [...day.querySelectorAll<HTMLElement>("figure")].flatMap((figure) => {
    const data = figure.querySelector("script.readings");
    const reading = figure.querySelector<HTMLElement>(".reading")!;
    const svg = figure.querySelector("svg")!;
    return data === null ? [] : [{ svg, reading, readings: JSON.parse(data.textContent!) as PackedReadings }];
  });
  const show = (seconds: number) => showTime(day, slider, views, seconds);
  slider.addEventListener("input", () => show(Number(slider.value)));
  for (const plot of day.querySelectorAll<HTMLElement>(".plot[data-over-time]")) {
    plot.addEventListener("pointermove", (event) => {
      const time = pointedTime(plot, event.clientX);
      if (time !== null) show(time);
    });
    plot.addEventListener("keydown", (event) => {
      const time = steppedTime(slider, event);
      if (time !== null) show(time);
    });
  }
  show(Number(slider.value));
  // Room for the words once and for all, so that the page stands still while they change.
  for (const { reading } of views) reading.style.minHeight = `${reading.offsetHeight}px`;
}

/** The time that an arrow key asks for, a minute or with Shift ten minutes on; null for any other key. */
function steppedTime(slider: HTMLInputElement, event: KeyboardEvent): number | null {
  const direction = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
  if (direction === 0) return null;
  event.preventDefault();
  const step = Number(slider.step) * (event.shiftKey ? 10 : 1);
  return Math.min(Number(slider.max), Math.max(0, Number(slider.value) + direction * step));
}

interface DayView {
  svg: SVGSVGElement;
  reading: HTMLElement;
  readings: PackedReadings;
}

function showTime(day: HTMLElement, slider: HTMLInputElement, views: readonly DayView[], seconds: number): void {
  slider.value = String(seconds);
  const clock = clockText(Number(day.dataset.start) + seconds);
  slider.setAttribute("aria-valuetext", clock);
  day.querySelector(".cursor output")!.textContent = clock;
  for (const { svg, reading, readings } of views) {
    moveCursor(svg, seconds);
    fill(reading, clock, readingsAt(readings, seconds));
  }
}

/** The upright line at a time; beyond the picture's own end there is none. */
function moveCursor(svg: SVGSVGElement, seconds: number): void {
  const { timeLeft, timeRight, timeEnd, timeTop, timeBottom } = svg.dataset;
  let line = svg.querySelector(".time-cursor");
  if (line === null) {
    line = svg.ownerDocument.createElementNS("http://www.w3.org/2000/svg", "line");
    line.setAttribute("class", "time-cursor");
    svg.append(line);
  }
  const x = Number(timeLeft) + ((Number(timeRight) - Number(timeLeft)) * seconds) / Number(timeEnd);
  line.setAttribute("x1", x.toFixed(1));
  line.setAttribute("x2", x.toFixed(1));
  line.setAttribute("y1", timeTop ?? "0");
  line.setAttribute("y2", timeBottom ?? "0");
  line.setAttribute("visibility", seconds > Number(timeEnd) ? "hidden" : "visible");
}

function pointedTime(plot: HTMLElement, clientX: number): number | null {
  const svg = plot.querySelector("svg")!;
  const box = svg.getBoundingClientRect();
  const x = ((clientX - box.left) * svg.viewBox.baseVal.width) / box.width;
  const [left, right] = [Number(svg.dataset.timeLeft), Number(svg.dataset.timeRight)];
  if (x < left || x > right) return null;
  return ((x - left) / (right - left)) * Number(svg.dataset.timeEnd);
}

/** Name and value of everything at an instant; of a group the parts that are not 0. */
function readingsAt(readings: PackedReadings, seconds: number): [string, string][] {
  const found = new Map<string, string[]>();
  for (const series of readings.series) {
    const text = seriesText(series, seconds);
    const name = series.g === "" ? series.n : series.g;
    const parts = found.get(name) ?? [];
    found.set(name, parts);
    if (series.g === "") parts.push(text);
    else if (!/^0 /.test(text)) parts.push(`${series.n} ${text}`);
  }
  for (const { name, spans } of readings.spans) {
    const span = spans.find(([from, to]) => seconds >= from && seconds < to);
    if (span !== undefined) found.set(name, [span[2]]);
  }
  return [...found].map(([name, parts]) => [name, parts.length === 0 ? "0" : parts.join(", ")]);
}

function seriesText(series: PackedSeries, seconds: number): string {
  const unit = series.u === "" ? "" : ` ${series.u}`;
  if ("t" in series) return valueAt(series.t, series.v, seconds) + unit;
  const bin = Math.min(series.m.length - 1, Math.floor(seconds / series.b));
  const mean = String(series.m[bin] ?? 0);
  const { l, h } = series;
  if (l === undefined || h === undefined || l[bin] === h[bin]) return mean + unit;
  return `${mean} (${l[bin]} to ${h[bin]})${unit}`;
}

function valueAt(times: readonly number[], values: readonly number[], seconds: number): string {
  let [low, high] = [0, times.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (times[middle]! <= seconds) low = middle;
    else high = middle - 1;
  }
  return String(values[low] ?? 0);
}

function clockText(secondsAfterMidnight: number): string {
  const minutes = Math.floor(secondsAfterMidnight / 60 + 1e-6);
  const days = Math.floor(minutes / 1440);
  const time = [Math.floor(minutes / 60) % 24, minutes % 60].map((part) => String(part).padStart(2, "0")).join(":");
  return days === 0 ? time : `${time} +${days} d`;
}

/** Pictures that are not over the clock: what is pointed at, or stepped to with the arrow keys, is told below them. */
function startMarks(plot: HTMLElement): void {
  const marks = [...plot.querySelectorAll<SVGElement>("[data-value]")];
  let chosen = -1;
  plot.addEventListener("pointermove", (event) => {
    chosen = nearestMark(marks, event.clientX, event.clientY);
    showMark(plot, marks, chosen);
  });
  plot.addEventListener("keydown", (event) => {
    const forward = event.key === "ArrowRight" || event.key === "ArrowDown";
    const back = event.key === "ArrowLeft" || event.key === "ArrowUp";
    if (marks.length === 0 || !(forward || back || event.key === "Escape")) return;
    event.preventDefault();
    chosen = forward ? Math.min(marks.length - 1, chosen + 1) : back ? Math.max(0, chosen - 1) : -1;
    showMark(plot, marks, chosen);
  });
}

/** Index of the mark whose box is closest to a point of the screen, -1 when none is within 40 px. */
function nearestMark(marks: readonly SVGElement[], x: number, y: number): number {
  let [best, least] = [-1, 40];
  for (const [index, mark] of marks.entries()) {
    const box = mark.getBoundingClientRect();
    const across = Math.max(box.left - x, 0, x - box.right);
    const down = Math.max(box.top - y, 0, y - box.bottom);
    const distance = Math.hypot(across, down);
    if (distance < least) [best, least] = [index, distance];
  }
  return best;
}

function showMark(plot: HTMLElement, marks: readonly SVGElement[], chosen: number): void {
  for (const [index, mark] of marks.entries()) mark.classList.toggle("pointed", index === chosen);
  plot.parentElement!.querySelector(".reading")!.textContent = marks[chosen]?.dataset.value ?? "";
}

function fill(reading: HTMLElement, clock: string, values: readonly [string, string][]): void {
  reading.replaceChildren(clock);
  for (const [name, value] of values) {
    const bold = reading.ownerDocument.createElement("b");
    bold.textContent = name;
    reading.append(" \u00B7 ", bold, ` ${value}`);
  }
}

/** What is folded away on the screen because it is long, and belongs on paper all the same. */
function openForPrint(page: Document): void {
  const folded = [...page.querySelectorAll<HTMLDetailsElement>("details.inputs")];
  let opened: HTMLDetailsElement[] = [];
  addEventListener("beforeprint", () => {
    opened = folded.filter((each) => !each.open);
    for (const each of opened) each.open = true;
  });
  addEventListener("afterprint", () => {
    for (const each of opened) each.open = false;
  });
}
