import { useEffect, useState } from "preact/hooks";
import { clock } from "./state.ts";

/** The clock's seconds for words that need not change at every frame: at most ten times a second, at once when it stands. */
export function useSlowSeconds(): number {
  const [seconds, setSeconds] = useState(clock.seconds);
  useEffect(() => {
    let last = 0;
    return clock.watch((now) => {
      const time = performance.now();
      if (clock.playing.peek() && time - last < 100) return;
      last = time;
      setSeconds(now);
    });
  }, []);
  return seconds;
}
