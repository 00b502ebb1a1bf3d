import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { MAX_LINK_CHARACTERS, readLink, writeLink } from "../../../../viz/page/plan/link.ts";

const LINKED = {
  name: "plan.json",
  text: '{ "name": "Kaninchen – 兎" }',
  files: {},
  moves: { "line.a.buffer": 3 },
  seed: "7",
  replication: 2,
};

/** What `writeLink` makes of any value, for links that nobody's page has made. */
async function packed(value: unknown): Promise<string> {
  return (await writeLink(value as typeof LINKED))!;
}

describe("a plan in a link", () => {
  it("comes back as it went, in letters that an address may hold", async () => {
    const text = (await writeLink(LINKED))!;
    expect(text).toMatch(/^[\w-]+$/u);
    expect(await readLink(text)).toEqual({ linked: LINKED, problem: null });
  });

  it("is not made when it would be too long to be carried", async () => {
    const stream = uniformStream("noise", 0, "link", "letters");
    const noise = Array.from({ length: 40_000 }, () => String.fromCharCode(33 + Math.floor(stream.next() * 90))).join(
      "",
    );
    expect(await writeLink({ ...LINKED, text: noise })).toBeNull();
  });

  it.each<[string, () => Promise<string> | string, RegExp]>([
    ["cut short", async () => (await packed(LINKED)).slice(0, 40), /cut short or was changed/],
    ["no packed text at all", () => "!!!", /cut short or was changed/],
    ["empty", () => "", /cut short or was changed/],
    ["longer than a link may be", () => "a".repeat(MAX_LINK_CHARACTERS + 1), /longer than/],
    [
      "a small link that unfolds to a great text",
      () => packed({ ...LINKED, text: " ".repeat(3_000_000) }),
      /cut short or was changed/,
    ],
    ["something else in it", () => packed({ hello: "world" }), /does not contain a plan for this page/],
    ["a key too many", () => packed({ ...LINKED, script: "x" }), /does not contain a plan for this page/],
    ["a seed that is no text", () => packed({ ...LINKED, seed: 7 }), /does not contain a plan for this page/],
    ["a day that is none", () => packed({ ...LINKED, replication: -1 }), /does not contain a plan for this page/],
  ])("%s is refused in one sentence", async (_, make, words) => {
    const { linked, problem } = await readLink(await make());
    expect(linked).toBeNull();
    expect(problem).toMatch(words);
  });
});
