/**
 * A short list of times, seconds, for looking ahead: emptied and filled again at every look, so that no look allocates
 * anything once the list has been as long as it gets.
 */
export class Times {
  count = 0;
  private seconds = new Float64Array(16);

  clear(): void {
    this.count = 0;
  }

  at(rank: number): number {
    return this.seconds[rank]!;
  }

  /** Puts it behind the others. */
  push(seconds: number): void {
    if (this.count === this.seconds.length) this.grow();
    this.seconds[this.count++] = seconds;
  }

  /** Puts it among the others of an ascending list, to its place. */
  insert(seconds: number): void {
    this.push(seconds);
    let rank = this.count - 1;
    for (; rank > 0 && this.seconds[rank - 1]! > seconds; rank--) this.seconds[rank] = this.seconds[rank - 1]!;
    this.seconds[rank] = seconds;
  }

  /** The first so many of an ascending list, all of them if there are fewer, become `seconds`; it stays ascending. */
  replaceFirst(many: number, seconds: number): void {
    const replaced = Math.min(many, this.count);
    let rank = 0;
    for (; rank + replaced < this.count && this.seconds[rank + replaced]! < seconds; rank++) {
      this.seconds[rank] = this.seconds[rank + replaced]!;
    }
    this.seconds.fill(seconds, rank, rank + replaced);
  }

  private grow(): void {
    const longer = new Float64Array(2 * this.count);
    longer.set(this.seconds);
    this.seconds = longer;
  }
}

/** When heads come to a point of the way from stunning to sticking, the next one to be stunned last; and to the point after it. */
export class Ahead {
  comes = new Times();
  next = new Times();

  begin(): void {
    this.comes.clear();
    this.next.clear();
  }

  /** From now on it is the next point that is looked at. */
  turn(): void {
    const { comes } = this;
    this.comes = this.next;
    this.next = comes;
    comes.clear();
  }
}
