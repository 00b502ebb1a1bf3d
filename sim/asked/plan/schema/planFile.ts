import { z } from "zod";
import { mass, rate, time } from "../../../text/units/index.ts";
import { CREW_RULES, LATE_HELP, SHARED_CLOCKS, SOURCE_KINDS } from "../plan.ts";
import { readGateStart } from "../readPoint.ts";
import type { TextFiles } from "../textFiles.ts";
import { atStart } from "./atStart.ts";
import { CEILINGS } from "./ceilings.ts";
import { crewName } from "./crewNames.ts";
import { day } from "./day.ts";
import { limit, point } from "./limit.ts";
import { liveHandling } from "./liveHandling.ts";
import { money } from "./money.ts";
import { pay } from "./moneyText.ts";
import { plantUtilities } from "./plantUtilities.ts";
import { bodyParts, presentation } from "./presentation.ts";
import { quantity, quantityAboveZero, readBy, share } from "./readBy.ts";
import { record } from "./record.ts";
import { site } from "./site.ts";
import { stage } from "./stage.ts";
import { supply } from "./supply.ts";
import { freeText, name, reference } from "./text.ts";
import { uncertainFigure } from "./uncertain.ts";
import { type VaryingQuantities, varyingQuantities } from "./varying.ts";
import { week } from "./week.ts";
import { whole } from "./whole.ts";

/** The shape of the plan file. What one part says of another is checked by the rules; see `readPlan`. */
export function planFile(files: TextFiles) {
  const varying = varyingQuantities(files);
  return record({
    $schema: z.string().optional().describe("Where this schema lies, for editors."),
    name: name().describe("Name of the plan."),
    notes: freeText().default("").describe("Anything a reader should know."),
    target: quantityAboveZero(rate)
      .nullable()
      .default(null)
      .describe("Heads per hour the owner wants: drawn and reported, never enforced. Default: null, none."),
    sources: z.array(source()).max(CEILINGS.sources).default([]).describe("Where the figures come from."),
    uncertain: z
      .array(uncertainFigure())
      .max(CEILINGS.uncertain)
      .default([])
      .describe(
        "Figures that nobody knows exactly, for gambrel doubt: everything else takes them as written. Default: none.",
      ),
    day: day().describe("Shifts, breaks and how the day ends."),
    supply: supply(varying).describe(`Where the heads come from. At most ${CEILINGS.heads} heads in all.`),
    atStart: atStart(varying)
      .nullable()
      .default(null)
      .describe(
        "What stands in lairage and hangs in chillers when the day begins, or the first day of a week. Default: null, nothing.",
      ),
    liveHandling: liveHandling(varying)
      .nullable()
      .default(null)
      .describe("Crates; with a supply in loads, and only then."),
    crews: z.array(crew()).max(CEILINGS.crews).default([]).describe("Pools of people. Default: none."),
    sharedBreakdowns: z
      .array(sharedBreakdown(varying))
      .max(CEILINGS.sharedBreakdowns)
      .default([])
      .describe("Breakdowns that stop several stages at once. Default: none."),
    line: z
      .array(stage(varying))
      .min(1)
      .max(CEILINGS.stages)
      .describe(
        `Stages in the order heads pass them; the first takes heads out of the crates. At most ${CEILINGS.stages}, stations on chains included.`,
      ),
    limits: z.array(limit()).max(CEILINGS.limits).default([]).describe("Watched times. Default: none."),
    gates: z
      .array(gate())
      .max(CEILINGS.gates)
      .default([])
      .describe("At most so many heads between two points of their way. Default: none."),
    stunned: stunned()
      .nullable()
      .default(null)
      .describe("What is done so that no stunned animal waits for its sticking. Default: null, nothing."),
    vessels: z
      .array(vessel())
      .max(CEILINGS.vessels)
      .default([])
      .describe("Tanks, bins and troughs that by-products run into. Default: none."),
    utilities: plantUtilities()
      .nullable()
      .default(null)
      .describe(
        "What the plant uses beside its stages: hot water, cleaning, compressed air, ventilation. Default: null.",
      ),
    site: site()
      .nullable()
      .default(null)
      .describe(
        "Building and services: what the layout, the equipment list and the connection sheet are worked out from. No day depends on it. Default: null, usual figures.",
      ),
    money: money().nullable().default(null).describe("What it all costs and earns. Default: null, no money."),
    dressing: freeText()
      .default("")
      .describe(
        'What stays on the carcass, in words, where no "presentation" says it: a dressing percentage means nothing without it.',
      ),
    presentation: presentation()
      .nullable()
      .default(null)
      .describe(
        "What is sold as a carcass; yields and the parts that stages take off follow. Default: null, not said.",
      ),
    week: week(varying)
      .nullable()
      .default(null)
      .describe(
        "Days one after another, each the day of this plan but for what it says itself. Default: null, one day alone.",
      ),
    bodyParts: bodyParts()
      .nullable()
      .default(null)
      .describe('What an animal is made of; together 100 %. Needed where a stage takes off "parts". Default: null.'),
  });
}

/** A plan file of sound shape: SI numbers, clock times in seconds after midnight, defaults filled in. */
export type PlanFile = z.output<ReturnType<typeof planFile>>;

/** Where figures come from. */
function source() {
  return record({
    path: z
      .string()
      .max(500)
      .default("")
      .describe('What it speaks for: "" for the whole plan, "line.skinning" for that stage and all below it.'),
    kind: z.enum(SOURCE_KINDS).describe("How far the figures can be trusted."),
    note: freeText().default("").describe("Who, when, which document."),
  });
}

/** At most so many heads between two points of their way. */
function gate() {
  return record({
    name: name().describe("Name of the gate."),
    from: readBy(readGateStart, { type: "string", pattern: "^start of .+$", examples: ["start of stunning"] }).describe(
      "Where heads are held back: the start of a stage's work.",
    ),
    to: point().describe("Where they count no longer; further down the line."),
    atMost: whole(1, CEILINGS.places).describe("Most heads between the two points."),
  });
}

/** A tank, bin or trough that by-products run into. */
function vessel() {
  return record({
    name: name().describe("Name of the vessel."),
    capacity: quantityAboveZero(mass).describe("What it holds."),
    emptyAt: quantityAboveZero(mass)
      .optional()
      .describe("Emptying is called for when so much is in it. Default: its capacity."),
    emptying: quantity(time).describe("Time it takes to empty or exchange it."),
    crew: crewName("Crew that gives one person for the emptying. Default: null, it needs nobody."),
    whenFull: z
      .enum(["stop", "spill"])
      .default("stop")
      .describe("Full: the stages that feed it stop, or it spills and the spill is counted."),
  });
}

/** One breakdown that stops several stages at once. */
function sharedBreakdown(varying: VaryingQuantities) {
  return record({
    name: name().describe("What stops them: the power, a control board, the compressor."),
    stops: z
      .array(reference())
      .min(1)
      .max(CEILINGS.stages)
      .describe(
        "Stations, on chains or not, chains and crate steps that it stops, by the names that results give them.",
      ),
    clock: z
      .enum(SHARED_CLOCKS)
      .default("any running")
      .describe("Whether the uptime counts while any of them works, only while all of them do, or always."),
    uptime: varying.timeAboveZero.describe("Time from the end of one repair to the next stop."),
    repair: varying.time.describe("Time from the stop until they run again."),
    crew: crewName(
      "Crew that gives one person for the whole repair, first come first served. Default: null, help is always at hand.",
    ),
  });
}

/** A pool of people. */
function crew() {
  return record({
    name: name().describe("Name of the crew."),
    people: z
      .union([whole(0, CEILINGS.people), z.record(z.string(), whole(0, CEILINGS.people))])
      .describe(
        "How many are there: one number for every shift, or a number by shift name (a shift not named has none).",
      ),
    rule: z
      .enum(CREW_RULES)
      .default("furthest downstream")
      .describe("Which of the waiting stations gets a person who is free."),
    walking: quantity(time)
      .prefault("0 s")
      .describe("Time to walk to another station than the last one; it counts as work. Default: none."),
    absent: share()
      .prefault(0)
      .describe("Chance of each person, on their own, to be missing for the whole day. Default: 0."),
    rotation: record({
      every: quantityAboveZero(time).describe("Longest time at one task; a head in hand is finished."),
      takes: quantityAboveZero(time).describe(
        "How long everybody is away from work to change, hands and knives washed.",
      ),
    })
      .nullable()
      .default(null)
      .describe("Its people change places so that nobody does one task for longer. Default: null, by no rule."),
    ill: whole(0, CEILINGS.people)
      .default(0)
      .describe("So many of them are missing for sure, in every shift that they work. Default: 0."),
    cover: z
      .array(reference())
      .max(CEILINGS.crews)
      .default([])
      .describe(
        'Crews that lend people for the whole shift where fewer than "atLeast" of this one are there, the first that can ' +
          "spare somebody. Default: none.",
      ),
    atLeast: whole(1, CEILINGS.people)
      .optional()
      .describe(
        'So many are there at least, with "cover"; no more than the shift has by plan. Default: what its work takes that ' +
          "nobody else may do, one person or more.",
      ),
    leaves: z
      .enum(["with the last work of the day", "when its own work is done"])
      .default("with the last work of the day")
      .describe(
        "When people go home after their last shift: all with the day's last work (default), or this crew when nothing " +
          "comes to its own stations any more, in overtime of its own if need be.",
      ),
    pay: pay().nullable().default(null).describe('Of one person; needs "money". Default: null, not reckoned.'),
  });
}

/** What is done so that no stunned animal waits for its sticking. */
function stunned() {
  return record({
    from: reference().describe("Station that stuns; on a chain or not."),
    to: reference().describe("Station that sticks; further down the line, on a chain or not."),
    hold: z
      .boolean()
      .default(true)
      .describe(
        "Stun a head only when, by all that is known at that instant, it can be stuck and begin to bleed without a wait (default).",
      ),
    late: late()
      .nullable()
      .default(null)
      .describe("What is done for a head that waits all the same. Default: null, nothing."),
  });
}

function late() {
  return record({
    after: quantityAboveZero(time).describe(
      "Time from the end of stunning after which somebody is called to the head.",
    ),
    help: z
      .enum(LATE_HELP)
      .describe(
        'What is done: "stun again", after which the time counts anew, or "stick there", where the head is: it goes on as stuck.',
      ),
    takes: quantity(time).describe("How long it takes, from when somebody is there."),
    crew: crewName("Crew of which one person does it, before other work. Default: null, somebody is always at hand."),
  });
}
