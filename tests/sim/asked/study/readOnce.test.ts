import { expect, it } from "vitest";
import { readOnce } from "../../../../sim/asked/study/readOnce.ts";

it("readOnce reads each file once, and remembers that one could not be read", () => {
  let reads = 0;
  const files = readOnce({
    readText(path) {
      reads += 1;
      if (path === "bad") throw new Error("gone");
      return path;
    },
  });
  expect([files.readText("a"), files.readText("a")]).toEqual(["a", "a"]);
  expect(() => files.readText("bad")).toThrow("gone");
  expect(() => files.readText("bad")).toThrow("gone");
  expect(reads).toBe(2);
  expect(readOnce(files)).toBe(files);
});
