import { z } from "zod";
import { capital } from "../../../text/units/index.ts";
import { BY_PRODUCT_CATEGORIES, LINE_ROOMS, SITE_FIGURES, type SiteFigureInfo, siteGroups } from "../site.ts";
import { CEILINGS } from "./ceilings.ts";
import { quantity, quantityAboveZero, share } from "./readBy.ts";
import { record } from "./record.ts";

const MAX_NUMBER = 10_000;

/** What the drawing of the plant and the sheet of its connections are worked out from, where the plan knows better than the usual figures. */
export function site() {
  return record({
    ...Object.fromEntries(Object.entries(siteGroups()).map(([name, keys]) => [name, group(name, keys)])),
    roomOf: z
      .record(z.string(), z.enum(LINE_ROOMS))
      .refine(few, FEW)
      .default({})
      .describe("By section or stage: the room that it stands in. Default: by the words in their names."),
    categoryOf: z
      .record(z.string(), z.literal(BY_PRODUCT_CATEGORIES))
      .refine(few, FEW)
      .default({})
      .describe("By by-product or way out: its legal category, 1 to 3. Default: by the words in its name."),
  });
}

const FEW = `more than ${CEILINGS.stages} names`;

function few(names: object): boolean {
  return Object.keys(names).length <= CEILINGS.stages;
}

const WHAT: Record<string, string> = {
  line: "What takes room along the rail.",
  rooms: "What sizes the rooms.",
  water: "Hot and cold water, and what leaves by the drains.",
  air: "Compressed air and ventilation.",
  power: "Electricity.",
  cold: "Refrigeration.",
  byProducts: "Containers.",
};

function group(name: string, keys: ReturnType<typeof siteGroups>[string]) {
  return record(Object.fromEntries(keys.map((key) => [key.slice(name.length + 1), figure(SITE_FIGURES[key])])))
    .default({})
    .describe(`${WHAT[name]} Default: usual figures, each said to be assumed.`);
}

function figure({ family, usual, what, source }: SiteFigureInfo) {
  return readerOf(family)
    .optional()
    .describe(`${capital(what)}. Default: ${usual}, ${source}.`);
}

function readerOf(family: SiteFigureInfo["family"]) {
  if (family === "share") return share();
  if (family === "number") return z.number().gt(0).max(MAX_NUMBER);
  return family.least < 0 ? quantity(family) : quantityAboveZero(family);
}
