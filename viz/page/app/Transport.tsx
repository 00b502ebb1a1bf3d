import { useRef } from "preact/hooks";
import { formatClock, readClock } from "../../../sim/text/units/index.ts";
import { SPEEDS } from "./dayClock.ts";
import { useSlowSeconds } from "./hooks.ts";
import { Icon } from "./Icon.tsx";
import * as state from "./state.ts";
import { stepToEvent } from "./stepToEvent.ts";

/** Play, step, jump, speed, and which day is drawn. */
export function Transport() {
  const { clock } = state;
  const isPlaying = clock.playing.value;
  return (
    <section class="transport" aria-label="Time of the day shown">
      <div class="buttons">
        <button type="button" class="round" onClick={() => clock.moveTo(0)} aria-label="To the start of the day">
          <Icon name="start" />
        </button>
        <button type="button" class="round" onClick={() => stepToEvent(-1)} aria-label="Back to the previous event">
          <Icon name="back" />
        </button>
        <button
          type="button"
          class="round main"
          aria-label={isPlaying ? "Pause" : "Play"}
          aria-pressed={isPlaying}
          onClick={() => (isPlaying ? clock.pause() : clock.play())}
        >
          <Icon name={isPlaying ? "pause" : "play"} />
        </button>
        <button type="button" class="round" onClick={() => stepToEvent(1)} aria-label="On to the next event">
          <Icon name="next" />
        </button>
      </div>
      <ClockFace />
      <Jump />
      <Speed />
      <DayNumber />
    </section>
  );
}

function ClockFace() {
  const seconds = useSlowSeconds();
  const start = state.courses.base.value?.record.startClockSeconds ?? 0;
  return <output class="clock">{formatClock(start + Math.floor(seconds), true)}</output>;
}

function Jump() {
  const input = useRef<HTMLInputElement>(null);
  const jump = (event: Event) => {
    event.preventDefault();
    const start = state.courses.base.value?.record.startClockSeconds ?? 0;
    const { value, fault } = readClock(input.current!.value.trim());
    if (fault !== null) {
      state.notice.value = `${fault.found}; ${fault.remedy}`;
      return;
    }
    state.clock.moveTo(value - start);
    state.notice.value = `At ${formatClock(start + state.clock.seconds, true)}.`;
  };
  return (
    <form class="jump" onSubmit={jump}>
      <label>
        <span>Go to</span>
        <input ref={input} id="jump" type="text" inputMode="numeric" placeholder="09:30" size={6} autocomplete="off" />
      </label>
      <button type="submit">Go</button>
    </form>
  );
}

function Speed() {
  const { speed } = state.clock;
  return (
    <label class="speed">
      <span>
        Speed <output>{speed.value}×</output>
      </span>
      <input
        type="range"
        min={0}
        max={SPEEDS.length - 1}
        step={1}
        value={SPEEDS.findIndex((each) => each >= speed.value)}
        aria-valuetext={`${speed.value} times as fast as the clock`}
        onInput={(event) => {
          speed.value = SPEEDS[Number(event.currentTarget.value)]!;
        }}
      />
    </label>
  );
}

/** One day is one draw of luck; the room sees others by their numbers. */
function DayNumber() {
  return (
    <label class="number" title="Which simulated day is drawn. The results are means of all twenty.">
      <span>Day drawn</span>
      <input
        type="number"
        min={1}
        max={999}
        value={state.replication.value + 1}
        onChange={(event) => {
          const day = Math.round(Number(event.currentTarget.value));
          if (day >= 1 && day <= 999) state.replication.value = day - 1;
          event.currentTarget.value = String(state.replication.value + 1);
        }}
      />
    </label>
  );
}
