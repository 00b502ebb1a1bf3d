/** Positions that are blocked for a place in one stage, in the order in which they blocked. */
export class Waiters<Waiter extends { nextWaiter: Waiter | null }> {
  first: Waiter | null = null;
  private last: Waiter | null = null;

  push(position: Waiter): void {
    position.nextWaiter = null;
    if (this.first === null) this.first = position;
    else this.last!.nextWaiter = position;
    this.last = position;
  }

  /** Takes the first position; there must be one. */
  shift(): Waiter {
    const position = this.first!;
    this.first = position.nextWaiter;
    return position;
  }
}
