import { SPEEDS } from "./dayClock.ts";
import * as state from "./state.ts";
import { stepToEvent } from "./stepToEvent.ts";

interface Key {
  /** As the browser names it. */
  key: string;
  shown: string;
  does: string;
  act: () => void;
}

/** Keys that work anywhere on the page, but not while something is typed or a dialog is open. */
export const KEYS: readonly Key[] = [
  {
    key: " ",
    shown: "space",
    does: "play or pause",
    act: () => (state.clock.playing.peek() ? state.clock.pause() : state.clock.play()),
  },
  { key: ".", shown: ".", does: "on to the next event", act: () => stepToEvent(1) },
  { key: ",", shown: ",", does: "back to the previous event", act: () => stepToEvent(-1) },
  { key: "]", shown: "]", does: "faster", act: () => changeSpeed(1) },
  { key: "[", shown: "[", does: "slower", act: () => changeSpeed(-1) },
  { key: "0", shown: "0", does: "to the start of the day", act: () => state.clock.moveTo(0) },
  { key: "g", shown: "g", does: "go to a clock time", act: () => document.getElementById("jump")?.focus() },
  { key: "e", shown: "e", does: "edit the plan", act: openEditor },
  { key: "?", shown: "?", does: "this help", act: () => document.getElementById("help")?.click() },
];

function openEditor(): void {
  state.editorOpen.value = true;
}

function changeSpeed(by: 1 | -1): void {
  const { speed } = state.clock;
  const at = SPEEDS.findIndex((each) => each >= speed.peek());
  speed.value = SPEEDS[Math.min(SPEEDS.length - 1, Math.max(0, at + by))]!;
  state.notice.value = `Speed ${speed.peek()} times.`;
}

/** Follows the keys; gives the function that stops it. */
export function startKeys(target: Document): () => void {
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || isBusy(event.target, event.key)) return;
    const key = KEYS.find((each) => each.key === event.key);
    if (key === undefined || target.querySelector("dialog[open]") !== null) return;
    event.preventDefault();
    key.act();
  };
  target.addEventListener("keydown", press);
  return () => target.removeEventListener("keydown", press);
}

/** Letters belong to whatever is typed in; the space bar to whatever button has the focus. */
function isBusy(target: EventTarget | null, key: string): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (key === " ") return target.closest("input, select, textarea, button, summary, a") !== null;
  return target.closest('input:not([type="range"]), select, textarea, [contenteditable]') !== null;
}
