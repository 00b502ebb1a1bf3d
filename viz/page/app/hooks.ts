import { useEffect, useRef, useState } from "preact/hooks";
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

/** Width of an element in pixels, followed as it changes; 0 before it is known. */
export function useWidth<Element extends HTMLElement>() {
  const ref = useRef<Element>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry!.contentRect.width)));
    observer.observe(ref.current!);
    return () => observer.disconnect();
  }, []);
  return { ref, width };
}
