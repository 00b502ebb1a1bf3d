/**
 * The script of a report: one time cursor through all pictures of a day, and the values of whatever is pointed at or
 * stepped to. It runs in the reader's browser and unpacks what `packedReadings.ts` packs. Texts are only ever set as text.
 *
 * Kept as text, not as functions that are printed: each compiler prints them in its own way, and the report of one run must
 * be the same to the last byte whatever the program was compiled with.
 */
export const READER_SCRIPT = `"use strict";
(() => {
  function startReader(page) {
    for (const hint of page.querySelectorAll(".hint, .cursor")) hint.hidden = false;
    for (const day of page.querySelectorAll(".day")) startDay(page, day);
    for (const plot of page.querySelectorAll(".plot:not([data-over-time])")) startMarks(plot);
    for (const link of page.querySelectorAll('a[href^="#"]')) link.addEventListener("click", () => unfold(page, link.hash));
    unfold(page, location.hash);
  }
  /** Opens what is folded around the place that a link leads to, and goes there. */
  function unfold(page, hash) {
    const place = hash === "" ? null : page.getElementById(hash.slice(1));
    const folded = place === null ? null : place.closest("details");
    if (folded === null) return;
    folded.open = true;
    folded.scrollIntoView();
  }
  /** The slider and every picture over the clock of one day, wherever it stands, move one cursor. */
  function startDay(page, day) {
    const slider = day.querySelector(".cursor input");
    if (slider === null) return;
    const parts = [day, ...page.querySelectorAll('[data-of-day="' + day.id + '"]')];
    const all = (selector) => parts.flatMap((part) => [...part.querySelectorAll(selector)]);
    const views = all("figure").flatMap((figure) => {
      const data = figure.querySelector("script.readings");
      const reading = figure.querySelector(".reading");
      const svgs = [...figure.querySelectorAll("svg")];
      return data === null ? [] : [{ svgs, reading, readings: JSON.parse(data.textContent) }];
    });
    const show = (seconds) => showTime(day, slider, views, seconds);
    slider.addEventListener("input", () => show(Number(slider.value)));
    for (const plot of all(".plot[data-over-time]")) {
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
    keepRoom(views);
    for (const folded of [day, ...page.querySelectorAll("details.part")])
      folded.addEventListener("toggle", () => keepRoom(views));
  }
  /** Room for the words once and for all, so that the page stands still while they change; a folded day has none yet. */
  function keepRoom(views) {
    for (const { reading } of views) reading.style.minHeight = reading.offsetHeight + "px";
  }
  /** The time that an arrow key asks for, a minute or with Shift ten minutes on; null for any other key. */
  function steppedTime(slider, event) {
    const direction = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    if (direction === 0) return null;
    event.preventDefault();
    const step = Number(slider.step) * (event.shiftKey ? 10 : 1);
    return Math.min(Number(slider.max), Math.max(0, Number(slider.value) + direction * step));
  }
  function showTime(day, slider, views, seconds) {
    slider.value = String(seconds);
    const clock = clockText(Number(day.dataset.start) + seconds);
    slider.setAttribute("aria-valuetext", clock);
    day.querySelector(".cursor output").textContent = clock;
    for (const { svgs, reading, readings } of views) {
      for (const svg of svgs) moveCursor(svg, seconds);
      fill(reading, clock, readingsAt(readings, seconds));
    }
  }
  /** The upright line at a time; beyond the picture's own end there is none. */
  function moveCursor(svg, seconds) {
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
  function pointedTime(plot, clientX) {
    const svg = plot.querySelector("svg");
    const box = svg.getBoundingClientRect();
    const x = ((clientX - box.left) * svg.viewBox.baseVal.width) / box.width;
    const [left, right] = [Number(svg.dataset.timeLeft), Number(svg.dataset.timeRight)];
    if (x < left || x > right) return null;
    return ((x - left) / (right - left)) * Number(svg.dataset.timeEnd);
  }
  /** Name and value of everything at an instant; of a group the parts that are not 0. */
  function readingsAt(readings, seconds) {
    const found = new Map();
    for (const series of readings.series) {
      const text = seriesText(series, seconds);
      const name = series.g === "" ? series.n : series.g;
      const parts = found.get(name) ?? [];
      found.set(name, parts);
      if (series.g === "") parts.push(text);
      else if (!/^0 /.test(text)) parts.push(series.n + " " + text);
    }
    for (const { name, spans } of readings.spans) {
      const span = spans.find(([from, to]) => seconds >= from && seconds < to);
      if (span !== undefined) found.set(name, [span[2]]);
    }
    return [...found].map(([name, parts]) => [name, parts.length === 0 ? "0" : parts.join(", ")]);
  }
  function seriesText(series, seconds) {
    if ("t" in series) return withUnit(valueAt(series.t, series.v, seconds), series.u);
    const bin = Math.min(series.m.length - 1, Math.floor(seconds / series.b));
    const mean = String(series.m[bin] ?? 0);
    const { l, h } = series;
    if (l === undefined || h === undefined || l[bin] === h[bin]) return withUnit(mean, series.u);
    return withUnit(mean + " (" + l[bin] + " to " + h[bin] + ")", series.u);
  }
  const ONE = { crates: "crate", heads: "head", people: "person" };
  function withUnit(text, unit) {
    const word = text === "1" ? (ONE[unit] ?? unit) : unit;
    return word === "" ? text : text + " " + word;
  }
  function valueAt(times, values, seconds) {
    let [low, high] = [0, times.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (times[middle] <= seconds) low = middle;
      else high = middle - 1;
    }
    return String(values[low] ?? 0);
  }
  function clockText(secondsAfterMidnight) {
    const minutes = Math.floor(secondsAfterMidnight / 60 + 1e-6);
    const days = Math.floor(minutes / 1440);
    const time = [Math.floor(minutes / 60) % 24, minutes % 60].map((part) => String(part).padStart(2, "0")).join(":");
    return days === 0 ? time : time + " +" + days + " d";
  }
  /** Pictures that are not over the clock: what is pointed at, or stepped to with the arrow keys, is told below them. */
  function startMarks(plot) {
    const marks = [...plot.querySelectorAll("[data-value]")];
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
  function nearestMark(marks, x, y) {
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
  function showMark(plot, marks, chosen) {
    for (const [index, mark] of marks.entries()) mark.classList.toggle("pointed", index === chosen);
    plot.parentElement.querySelector(".reading").textContent = marks[chosen]?.dataset.value ?? "";
  }
  function fill(reading, clock, values) {
    reading.replaceChildren(clock);
    for (const [name, value] of values) {
      const bold = reading.ownerDocument.createElement("b");
      bold.textContent = name;
      reading.append(" · ", bold, " " + value);
    }
  }
  startReader(document);
})();`;
