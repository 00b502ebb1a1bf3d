import type { Terminal } from "./terminal.ts";

const BAR = 24;
const REWRITE_MS = 100;

/** Shows how far a run is; `end` must be called before anything else is said. */
export interface Progress {
  update(done: number, total: number): void;
  end(): void;
}

/** A bar that rewrites itself on a terminal, a plain line at each quarter elsewhere. `now` in milliseconds. */
export function progress(terminal: Terminal, now: () => number): Progress {
  return terminal.live ? bar(terminal, now) : plainLines(terminal);
}

function bar(terminal: Terminal, now: () => number): Progress {
  const start = now();
  let last = Number.NEGATIVE_INFINITY;
  return {
    update(done, total) {
      if (now() - last < REWRITE_MS && done < total) return;
      last = now();
      const elapsed = (last - start) / 1000;
      const filled = Math.round((done / total) * BAR);
      const left = (elapsed / done) * (total - done);
      const drawn = "=".repeat(filled) + ".".repeat(BAR - filled);
      const share = `${String(Math.floor((done / total) * 100)).padStart(3)} %`;
      terminal.rewrite(`${drawn} ${share}  ${done} of ${total} days, ${spell(elapsed)}, about ${spell(left)} left`);
    },
    end() {
      terminal.rewrite("");
    },
  };
}

function plainLines(terminal: Terminal): Progress {
  let quarter = 0;
  return {
    update(done, total) {
      const reached = Math.floor((done / total) * 4);
      if (reached === quarter) return;
      quarter = reached;
      terminal.say(`${done} of ${total} days simulated (${reached * 25} %)`);
    },
    end() {},
  };
}

function spell(seconds: number): string {
  const whole = Math.round(seconds);
  return whole < 60 ? `${whole} s` : `${Math.floor(whole / 60)} min ${whole % 60} s`;
}
