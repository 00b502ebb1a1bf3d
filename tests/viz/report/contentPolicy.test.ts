import { expect, test } from "vitest";
import { contentPolicy } from "../../../viz/report/contentPolicy.ts";

// SHA-256 of "abc", FIPS 180-2 appendix B.1: ba7816bf 8f01cfea 414140de 5dae2223 b00361a3 96177a9c b410ff61 f20015ad.
const ABC = Buffer.from("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", "hex").toString("base64");

test("nothing is allowed but the given style and script, by their SHA-256", () => {
  expect(contentPolicy("abc", "abc")).toBe(
    `default-src 'none'; style-src 'sha256-${ABC}'; script-src 'sha256-${ABC}'; base-uri 'none'; form-action 'none'`,
  );
  expect(contentPolicy("abc", "abd")).not.toBe(contentPolicy("abc", "abc"));
});
