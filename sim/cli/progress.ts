import type { Terminal } from "./terminal.ts";

const BAR = 24;
const REWRITE_MS = 100;
const LONGEST_SILENCE_MS = 60_000;

/** Shows how far a run is; `end` must be called before anything else is said. */
export interface Progress {
  update(done: number, total: number): void;
  end(): void;
}

/**
 * A bar that rewrites itself on a terminal; elsewhere a plain line at each quarter, and after a minute without one.
 * `now` in milliseconds.
 */
export function progress(terminal: Terminal, now: () => number): Progress {
  return terminal.live ? bar(terminal, now) : plainLines(terminal, now);
}

function bar(terminal: Terminal, now: () => number): Progress {
  const pace = paceSince(now());
  let last = Number.NEGATIVE_INFINITY;
  return {
    update(done, total) {
      const left = pace(done, total, now());
      if (now() - last < REWRITE_MS && done < total) return;
      last = now();
      const filled = Math.round((done / total) * BAR);
      const drawn = "=".repeat(filled) + ".".repeat(BAR - filled);
      const share = `${String(Math.floor((done / total) * 100)).padStart(3)} %`;
      terminal.rewrite(`${drawn} ${share}  ${done} of ${total} days, ${left}`);
    },
    end() {
      terminal.rewrite("");
    },
  };
}

function plainLines(terminal: Terminal, now: () => number): Progress {
  const pace = paceSince(now());
  let quarter = 0;
  let last = now();
  return {
    update(done, total) {
      const left = pace(done, total, now());
      const reached = Math.floor((done / total) * 4);
      if (reached === quarter && now() - last < LONGEST_SILENCE_MS) return;
      quarter = reached;
      last = now();
      terminal.say(`${done} of ${total} days simulated (${Math.floor((done / total) * 100)} %), ${left}`);
    },
    end() {},
  };
}

/**
 * Words on time gone and time left, at the pace so far. The first update comes before anything is done: days that are
 * there already (a run that is resumed) do not count towards the pace.
 */
function paceSince(start: number): (done: number, total: number, now: number) => string {
  let before: number | null = null;
  return (done, total, now) => {
    before ??= done;
    const elapsed = (now - start) / 1000;
    if (done === before) return spell(elapsed);
    const left = done < total ? `, about ${spell((elapsed / (done - before)) * (total - done))} left` : "";
    return spell(elapsed) + left;
  };
}

function spell(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < 60) return `${whole} s`;
  const minutes = Math.floor(whole / 60);
  return minutes < 60 ? `${minutes} min ${whole % 60} s` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
