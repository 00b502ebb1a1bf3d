const PATHS = {
  play: "M7 4.5v15l12-7.5z",
  pause: "M6.5 5h4v14h-4zM13.5 5h4v14h-4z",
  next: "M5 5v14l9-7zM16 5h3v14h-3z",
  back: "M19 5v14l-9-7zM5 5h3v14H5z",
  start: "M12 5v14l-8-7zM20 5v14l-8-7z",
  close: "M6 4.6L12 10.6L18 4.6L19.4 6L13.4 12L19.4 18L18 19.4L12 13.4L6 19.4L4.6 18L10.6 12L4.6 6z",
  sun: "M12 7a5 5 0 1 0 .01 0zM11 1h2v4h-2zM11 19h2v4h-2zM1 11h4v2H1zM19 11h4v2h-4zM4.2 5.6l1.4-1.4 2.8 2.8L7 8.4zM15.6 17l1.4-1.4 2.8 2.8-1.4 1.4zM4.2 18.4L7 15.6 8.4 17l-2.8 2.8zM15.6 7l2.8-2.8 1.4 1.4L17 8.4z",
} as const;

/** A small picture beside or in place of words; always with words for those who do not see it. */
export function Icon({ name }: { name: keyof typeof PATHS }) {
  return (
    <svg class="icon" viewBox="0 0 24 24" width="20" height="20" aria-hidden="true" focusable="false">
      <path d={PATHS[name]} fill="currentColor" />
    </svg>
  );
}
