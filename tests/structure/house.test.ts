import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { houseSvg } from "./drawHouse.ts";
import { FILES, roomOf } from "./importGraph.ts";

const stored = readFileSync(join(import.meta.dirname, "house.svg"), "utf8");

it("the stored picture of the house is what the imports give now; else run npx tsx tests/structure/drawHouse.ts", () => {
  expect(houseSvg() === stored).toBe(true);
});

it("every room is in the picture, with the number of its files", () => {
  const texts = [...stored.matchAll(/>([^<>]+)<\/text>/g)].map(([, text]) => text!);
  const rooms = new Map<string, number>();
  for (const file of FILES.filter((path) => roomOf(path) !== ""))
    rooms.set(roomOf(file), (rooms.get(roomOf(file)) ?? 0) + 1);
  for (const [room, files] of rooms) {
    const at = texts.indexOf(room.split("/").at(-1)!);
    expect(texts[at + 1], room).toBe(files === 1 ? "1 file" : `${files} files`);
  }
});
