import { useEffect, useRef, useState } from "preact/hooks";

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
