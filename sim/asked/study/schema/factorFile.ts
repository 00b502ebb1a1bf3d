import { z } from "zod";
import { name, record, saidText } from "../../plan/index.ts";
import { changeKeys } from "./changeFile.ts";

const MAX_LEVELS = 2000;
const MAX_LINKS = 20;

/** One factor. Which of its forms it has, and whether the design can use that, is checked by `factorFaults`. */
export function factorFile() {
  return record({
    name: name().describe("Name of the factor, for tables and charts."),
    path: saidText()
      .optional()
      .describe('What it sets: such as "line.skinning.buffer"; with levels, or with from and to.'),
    ...span(),
    sets: z
      .array(record({ path: saidText().describe("What is set."), ...span() }))
      .min(2)
      .max(MAX_LINKS)
      .optional()
      .describe("Paths that are set together, instead of path: all with as many levels, or all with from and to."),
    options: z
      .array(record({ name: name().describe("Name of the option."), ...changeKeys() }))
      .min(2)
      .max(MAX_LEVELS)
      .optional()
      .describe("Whole alternatives as levels, instead of path: each sets, puts in or takes out what it says."),
    labels: z
      .array(name())
      .optional()
      .describe("Words for the levels, one each. Default: the values themselves. Not with options or from and to."),
  });
}

export type FactorFile = z.output<ReturnType<typeof factorFile>>;
export type SpanFile = Pick<FactorFile, "levels" | "from" | "to">;

function span() {
  return {
    levels: z
      .array(z.unknown())
      .min(2)
      .max(MAX_LEVELS)
      .optional()
      .describe("The values it takes, as the plan file would write them."),
    from: z
      .unknown()
      .optional()
      .describe(
        'One end of a range: a number (whole numbers stay whole), a quantity "5 s", a share "2 %", a time "06:00".',
      ),
    to: z.unknown().optional().describe("The other end, in the same unit."),
  };
}
