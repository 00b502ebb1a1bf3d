import { deflateRawSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MAX_LINK_CHARACTERS, readLink, writeLink } from "../../viz/page/plan/link.ts";
import { SMALL_PLAN } from "../support/smallPlan.ts";

const LINKED = { name: "a.json", text: JSON.stringify(SMALL_PLAN), files: {}, moves: {}, seed: "1", replication: 0 };
const packed = (text: string): string => deflateRawSync(text).toString("base64url");
const WORDS = /^The plan in this link cannot be read: .+\.$/;

describe("the part of a link that carries a plan", () => {
  it.each([
    ["nothing", ""],
    ["letters of no address", "%%%"],
    ["text that is not packed", Buffer.from("{}").toString("base64url")],
    ["no JSON", packed("{")],
    ["a number", packed("5")],
    ["an empty object", packed("{}")],
    ["a plan by itself", packed(JSON.stringify(SMALL_PLAN))],
    ["an unknown key", packed(JSON.stringify({ ...LINKED, script: "alert(1)" }))],
    ["a name that is no text", packed(JSON.stringify({ ...LINKED, name: { toString: "x" } }))],
    ["a day that is none", packed(JSON.stringify({ ...LINKED, replication: -1 }))],
    ["moves of text", packed(JSON.stringify({ ...LINKED, moves: { a: "5" } }))],
    ["files of numbers", packed(JSON.stringify({ ...LINKED, files: { a: 5 } }))],
    ["a prototype", packed('{"__proto__":{"name":"x","text":"{}"}}')],
    ["brackets without end", packed("[".repeat(500_000))],
    ["text that unfolds to a thousand times its length", packed(" ".repeat(20_000_000))],
    ["more letters than a link has", "A".repeat(MAX_LINK_CHARACTERS + 1)],
    ["bytes that are no text", deflateRawSync(Buffer.from([0xff, 0xfe, 0x80])).toString("base64url")],
  ])("is refused in a sentence when it holds %s", async (_, text) => {
    const { linked, problem } = await readLink(text);
    expect(linked).toBeNull();
    expect(problem).toMatch(WORDS);
  });

  it("is read whole, or refused in a sentence, whatever was changed on its way", async () => {
    const sound = (await writeLink(LINKED))!;
    expect((await readLink(sound)).linked).toEqual(LINKED);
    const letter = fc.constantFrom(..."ABCabc019-_=+/ %");
    const edits = fc.array(fc.tuple(fc.nat(sound.length - 1), letter), { minLength: 1, maxLength: 4 });
    await fc.assert(
      fc.asyncProperty(edits, fc.nat(sound.length), async (changes, cut) => {
        const letters = [...sound];
        for (const [at, other] of changes) letters[at] = other;
        const { linked, problem } = await readLink(letters.slice(0, cut).join(""));
        if (linked === null) expect(problem).toMatch(WORDS);
        else expect(Object.keys(linked).sort()).toEqual(Object.keys(LINKED).sort());
      }),
      { seed: 20270308, numRuns: 300 },
    );
  });
});
