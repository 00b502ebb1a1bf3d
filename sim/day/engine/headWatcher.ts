/** Told what happens to every head, in the order of time. Heads are numbered in hanging order, 0 first. */
export interface HeadWatcher {
  /** The head is hung; `arrived` is when its load (or it, in a stream) came, seconds. */
  begin(head: number, load: number, arrived: number): void;
  /** It passes a point of its way: index of the stage, index in MOMENTS. */
  pass(head: number, stage: number, moment: number, now: number): void;
  /** Somebody called to the stunned head begins to stick it where it is, or to stun it again. */
  help?(head: number, sticks: boolean): void;
  /** It has left the line to the destination with that index. */
  end(head: number, destination: number): void;
}
