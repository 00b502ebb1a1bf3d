import { expect, test } from "vitest";
import { serverDocument } from "../../../viz/index.ts";

test("each call gives a document of its own that can hold a picture", () => {
  const document = serverDocument();
  expect(document.createElementNS("http://www.w3.org/2000/svg", "svg").localName).toBe("svg");
  expect(serverDocument()).not.toBe(document);
});
