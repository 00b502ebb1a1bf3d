import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";

const take = (count: number, stream: { next(): number }) => Array.from({ length: count }, () => stream.next());

describe("uniformStream", () => {
  it("gives the same draws for the same four names", () => {
    expect(take(20, uniformStream("s", 3, "skinning", "work"))).toEqual(
      take(20, uniformStream("s", 3, "skinning", "work")),
    );
  });

  it("gives other draws when any one of the names differs", () => {
    const first = [
      uniformStream("s", 3, "skinning", "work"),
      uniformStream("t", 3, "skinning", "work"),
      uniformStream("s", 4, "skinning", "work"),
      uniformStream("s", 3, "sticking", "work"),
      uniformStream("s", 3, "skinning", "travel"),
    ].map((stream) => stream.next());
    expect(new Set(first).size).toBe(first.length);
  });

  it("keeps names apart that would run together when joined", () => {
    expect(uniformStream("s", 1, "a", "bc").next()).not.toBe(uniformStream("s", 1, "ab", "c").next());
  });

  it("mirrors every draw when antithetic", () => {
    const plain = take(50, uniformStream("s", 0, "a", "b"));
    const mirrored = take(50, uniformStream("s", 0, "a", "b", true));
    mirrored.forEach((u, index) => {
      expect(u).toBe(1 - plain[index]!);
    });
  });

  it("fills more than 32 bits", () => {
    const beyond = take(100, uniformStream("s", 0, "a", "b")).filter((u) => (u * 2 ** 32) % 1 !== 0);
    expect(beyond.length).toBeGreaterThan(95);
  });
});
