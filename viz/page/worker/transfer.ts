/** The buffers of all typed arrays in a plain value, each once: what can be handed over instead of copied. */
export function buffersOf(value: unknown, found = new Set<ArrayBuffer>()): ArrayBuffer[] {
  if (ArrayBuffer.isView(value)) {
    if (value.buffer instanceof ArrayBuffer) found.add(value.buffer);
  } else if (typeof value === "object" && value !== null) {
    for (const part of Object.values(value)) if (typeof part === "object") buffersOf(part, found);
  }
  return [...found];
}
