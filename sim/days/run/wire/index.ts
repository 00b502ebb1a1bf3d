/** How days travel: to a file and back, to other machines and back, with every bit. Needs Node. */

export { arithmeticMark } from "./arithmeticMark.ts";
export { exactJson, parseExactJson } from "./exactJson.ts";
export { type MakerMark, makerDifference, makerMark } from "./makerMark.ts";
export { simulatedDayShape } from "./simulatedDayShape.ts";
export { sourceDigest } from "./sourceDigest.ts";
