import { z } from "zod";

/** Longest link that is made or read: what mail programs and chats still carry whole. */
export const MAX_LINK_CHARACTERS = 30_000;
/** Most text that a link may unfold to; a small link can be made to unfold to any size. */
const MAX_TEXT = 1_000_000;

/** What a link carries: a plan as written, what is moved, and which days are looked at. */
const shape = z.strictObject({
  name: z.string().min(1).max(200),
  text: z.string().max(MAX_TEXT),
  files: z.record(z.string().max(500), z.string()).default({}),
  moves: z.record(z.string().max(500), z.number()).default({}),
  seed: z.string().min(1).max(200).default("1"),
  replication: z.int().min(0).max(998).default(0),
});
export type Linked = z.infer<typeof shape>;

export type LinkReading = { linked: Linked; problem: null } | { linked: null; problem: string };

/** The part of a link behind "#plan=": the plan packed (raw DEFLATE) in letters that any address may hold. Null when too long. */
export async function writeLink(linked: Linked): Promise<string | null> {
  const packed = await through(new TextEncoder().encode(JSON.stringify(linked)), new CompressionStream("deflate-raw"));
  const text = toLetters(packed);
  return text.length > MAX_LINK_CHARACTERS ? null : text;
}

/** Reads such a part. Whatever it holds is checked; a bad one gives one sentence that says what is wrong. */
export async function readLink(text: string): Promise<LinkReading> {
  if (text.length > MAX_LINK_CHARACTERS) {
    return bad(`the link is longer than ${MAX_LINK_CHARACTERS} characters; ask for the plan as a file`);
  }
  try {
    const bytes = await through(fromLetters(text), new DecompressionStream("deflate-raw"), MAX_TEXT);
    const found = shape.safeParse(JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes)));
    return found.success ? { linked: found.data, problem: null } : bad("it does not contain a plan for this page");
  } catch {
    return bad("it is cut short or was changed on its way; ask for it again");
  }
}

function bad(reason: string): LinkReading {
  return { linked: null, problem: `The plan in this link cannot be read: ${reason}.` };
}

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
  most = Infinity,
): Promise<Uint8Array<ArrayBuffer>> {
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw new RangeError("too long");
    }
    parts.push(value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Base64 for addresses (RFC 4648, section 5), without padding. */
function toLetters(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/u, "");
}

function fromLetters(text: string): Uint8Array<ArrayBuffer> {
  const letters = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
  return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
}
