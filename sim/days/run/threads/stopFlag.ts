/** A flag that every thread sees at once: a running thread reads no messages before its task is done. */
export class StopFlag {
  readonly shared: SharedArrayBuffer;
  readonly #cell: Int32Array;

  constructor(shared = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT)) {
    this.shared = shared;
    this.#cell = new Int32Array(shared);
  }

  raise(): void {
    Atomics.store(this.#cell, 0, 1);
  }

  get raised(): boolean {
    return Atomics.load(this.#cell, 0) === 1;
  }
}
