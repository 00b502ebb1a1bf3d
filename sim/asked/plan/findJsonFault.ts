/** What is wrong with a JSON text, and at which offset. */
export interface JsonFlaw {
  offset: number;
  found: string;
  allowed: string;
  remedy: string;
}

/** Nothing sound nests deeper than a dozen levels; without a bound a hostile file could exhaust the call stack. */
export const DEEPEST = 100;
/** The longest list a plan or study may hold. Every entry can have faults of its own, and all of them are told. */
const MAX_ENTRIES = 10_000;
const SPACE = /[ \t\n\r]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON text may not hold them bare, so they are left out here
const PLAIN = /[^"\\\u0000-\u001f]+/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const WORD = /(?:true|false|null)(?!\w)/y;

/** Text and the place reached in it; the first flaw is thrown to the top, where it becomes plain data. */
interface Cursor {
  text: string;
  at: number;
}

class Flaw extends Error {
  readonly data: JsonFlaw;
  constructor(data: JsonFlaw) {
    super(data.found);
    this.data = data;
  }
}

/**
 * The first place where a text stops being JSON (RFC 8259), or where an object names a key twice; null when it is sound.
 * Needed beside `JSON.parse`, whose messages differ between engines and often name no place. At most 100 levels deep, and 10,000
 * entries in one list or object.
 */
export function findJsonFault(text: string): JsonFlaw | null {
  const cursor = { text, at: 0 };
  try {
    takeValue(cursor, 0);
    skip(cursor, SPACE);
    if (cursor.at < text.length)
      fail(cursor, "the end of the file", "delete what follows, or check the brackets before it");
    return null;
  } catch (error) {
    if (error instanceof Flaw) return error.data;
    throw error;
  }
}

function takeValue(cursor: Cursor, depth: number): void {
  skip(cursor, SPACE);
  if (depth > DEEPEST) fail(cursor, `at most ${DEEPEST} levels of brackets`, "remove levels");
  const next = cursor.text[cursor.at];
  if (next === "{") takeList(cursor, "}", memberTaker(depth));
  else if (next === "[") takeList(cursor, "]", () => takeValue(cursor, depth + 1));
  else if (!takeText(cursor) && !skip(cursor, NUMBER) && !skip(cursor, WORD))
    fail(cursor, "a value", valueRemedy(cursor));
}

/** Takes "key": value pairs of one object and remembers its keys. */
function memberTaker(depth: number): (cursor: Cursor) => void {
  const keys = new Set<string>();
  return (cursor) => {
    const start = cursor.at;
    if (!takeText(cursor)) fail(cursor, "a key in double quotes", keyRemedy(cursor));
    const key = JSON.parse(cursor.text.slice(start, cursor.at)) as string;
    if (keys.has(key)) {
      const found = `the key '${key}' appears twice in one object`;
      throw new Flaw({ offset: start, found, allowed: "each key once", remedy: "delete one of the two" });
    }
    keys.add(key);
    skip(cursor, SPACE);
    if (!takeCharacter(cursor, ":")) fail(cursor, "a colon after the key", "put a colon between key and value");
    takeValue(cursor, depth + 1);
  };
}

function takeList(cursor: Cursor, close: "}" | "]", takeItem: (cursor: Cursor) => void): void {
  cursor.at += 1;
  skip(cursor, SPACE);
  if (takeCharacter(cursor, close)) return;
  for (let count = 1; ; count++) {
    if (count > MAX_ENTRIES) fail(cursor, `at most ${MAX_ENTRIES} entries in one list or object`, "remove entries");
    takeItem(cursor);
    skip(cursor, SPACE);
    if (takeCharacter(cursor, close)) return;
    const comma = cursor.at;
    if (!takeCharacter(cursor, ",")) fail(cursor, `a comma or '${close}'`, "is a comma missing before this?");
    skip(cursor, SPACE);
    if (cursor.text[cursor.at] === close) {
      const found = `a comma before '${close}'`;
      throw new Flaw({ offset: comma, found, allowed: "commas between items only", remedy: "delete this comma" });
    }
  }
}

/** A text with its quotes; piece by piece, since one pattern for the whole would exhaust the stack on a long one. */
function takeText(cursor: Cursor): boolean {
  const start = cursor.at;
  if (!takeCharacter(cursor, '"')) return false;
  while (skip(cursor, PLAIN) || skip(cursor, ESCAPE));
  if (takeCharacter(cursor, '"')) return true;
  cursor.at = start;
  return false;
}

function takeCharacter(cursor: Cursor, character: string): boolean {
  if (cursor.text[cursor.at] !== character) return false;
  cursor.at += 1;
  return true;
}

function skip(cursor: Cursor, pattern: RegExp): boolean {
  pattern.lastIndex = cursor.at;
  if (!pattern.test(cursor.text)) return false;
  cursor.at = pattern.lastIndex;
  return true;
}

function fail(cursor: Cursor, allowed: string, remedy: string): never {
  throw new Flaw({ offset: cursor.at, found: foundAt(cursor), allowed, remedy });
}

function foundAt({ text, at }: Cursor): string {
  const character = text.codePointAt(at);
  if (character === undefined) return "the text ends here";
  const shown = String.fromCodePoint(character);
  const code = character.toString(16).toUpperCase().padStart(4, "0");
  return /[\p{C}\p{Z}]/u.test(shown) ? `found the character U+${code}, which cannot be seen` : `found '${shown}'`;
}

function valueRemedy({ text, at }: Cursor): string {
  if (text[at] === "'") return "use double quotes";
  if (text[at] === "/" || text[at] === "#") return 'JSON has no comments: delete it, or say it in "notes"';
  if (text[at] === '"') return "is the closing quote missing, or a \\ not doubled?";
  if (at >= text.length) return "is a closing bracket missing?";
  return "put texts and quantities in double quotes; write numbers with a decimal point and a leading digit";
}

function keyRemedy({ text, at }: Cursor): string {
  const isOther = at < text.length && /["'/#]/u.test(text[at] as string);
  return isOther ? valueRemedy({ text, at }) : "put the key in double quotes";
}
