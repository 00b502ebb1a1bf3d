import { type Signal, signal } from "@preact/signals";

/** Speeds of play: simulated seconds to a second of ours. */
export const SPEEDS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000] as const;

/**
 * The time that everything on the page shows. Its seconds change at every frame, so those who draw them are called
 * directly; only what people switch (play, speed) is a signal.
 */
export class DayClock {
  readonly playing: Signal<boolean> = signal(false);
  readonly speed: Signal<number> = signal(100);
  seconds = 0;
  private end = 1;
  private readonly watchers = new Set<(seconds: number) => void>();
  private last: number | null = null;
  private readonly nextFrame: (call: (milliseconds: number) => void) => void;

  constructor(nextFrame: (call: (milliseconds: number) => void) => void) {
    this.nextFrame = nextFrame;
  }

  get endSeconds(): number {
    return this.end;
  }

  /** The day shown ends then; the time is kept where it still lies in the day. */
  setEnd(seconds: number): void {
    this.end = Math.max(1, seconds);
    this.moveTo(this.seconds);
  }

  moveTo(seconds: number): void {
    this.seconds = Math.min(this.end, Math.max(0, seconds));
    for (const watcher of this.watchers) watcher(this.seconds);
  }

  play(): void {
    if (this.playing.value) return;
    if (this.seconds >= this.end) this.moveTo(0);
    this.playing.value = true;
    this.last = null;
    this.nextFrame((now) => this.tick(now));
  }

  pause(): void {
    this.playing.value = false;
  }

  /** Called with the seconds whenever they change; gives the function that stops it. */
  watch(watcher: (seconds: number) => void): () => void {
    this.watchers.add(watcher);
    watcher(this.seconds);
    return () => this.watchers.delete(watcher);
  }

  private tick(now: number): void {
    if (!this.playing.value) return;
    // A frame that was long in coming (another window was in front) does not make the day jump.
    const elapsed = this.last === null ? 0 : Math.min(0.1, (now - this.last) / 1000);
    this.last = now;
    this.moveTo(this.seconds + elapsed * this.speed.value);
    if (this.seconds >= this.end) this.pause();
    else this.nextFrame((next) => this.tick(next));
  }
}
