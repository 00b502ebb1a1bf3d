import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { formatFault, readPlan } from "../../../../sim/asked/plan/index.ts";
import { planWith } from "../../../../sim/asked/study/index.ts";
import { readTries, TRY_OPTIONS, type WrittenOption } from "../../../../sim/questions/try/index.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

const file = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../../../experiments/${name}.json`, import.meta.url), "utf8"));
const FERNCOTE = file("plans/ferncote");
const FIRST = file("first-plan/first");
const TAVELMOSS = file("plans/tavelmoss-chains");
const FILES = { readText: () => "" };

/** "--ill a=1 --or --more b=2" as the command line gives it; values without blanks. */
function written(...words: string[]): WrittenOption[] {
  return words.map((word) => {
    const [, option = "", text = ""] = /^--([\w-]+) ?(.*)$/.exec(word) ?? [];
    return { option, text };
  });
}

function triesOf(json: unknown, ...words: string[]) {
  const { plan } = readPlan(json, FILES);
  return readTries(plan!, json, written(...words));
}

/** The one try, and the plan that comes of it. */
function tried(json: unknown, ...words: string[]) {
  const { tries, faults } = triesOf(json, ...words);
  if (tries === null) throw new Error(faults.map(formatFault).join("\n"));
  const [{ name, set, notes }] = tries as [(typeof tries)[0]];
  const built = planWith({ json, files: FILES }, { set, insert: [], remove: [] });
  if (built.plan === null) throw new Error(built.faults.map(formatFault).join("\n"));
  return { name, set, notes, plan: built.plan };
}

function faultsOf(json: unknown, ...words: string[]): string[] {
  return triesOf(json, ...words).faults.map(formatFault);
}

const people = (plan: { crews: { name: string; people: number[] }[] }, crew: string) =>
  plan.crews.find(({ name }) => name === crew)!.people;

describe("people", () => {
  it("more at each crew are a try of every crew that has somebody, crate steps too", () => {
    const { tries } = triesOf(FERNCOTE, "--more each=1");
    expect(tries!.map(({ name }) => name)).toEqual(
      FERNCOTE.crews.map(({ name }: { name: string }) => `one more at ${name}`),
    );
    const sliding = tries!.find(({ name }) => name === "one more at crate feeding")!;
    expect(sliding.set).toEqual({ 'crews["crate feeding"].people': 2, "liveHandling.feeding.positions": 2 });
    expect(triesOf(FERNCOTE, "--more each=1", "--late first=20 min").tries).toHaveLength(FERNCOTE.crews.length);
  });

  it("of a try that goes on from the first are named by what it does beyond that", () => {
    const first = "--ill evisceration=2,hanging=1";
    const { tries } = triesOf(FERNCOTE, first, "--or", first, "--move final trim:evisceration");
    expect(tries!.map(({ name }) => name)).toEqual([
      "two ill at evisceration, one ill at hanging",
      "the same, one moved from final trim to evisceration",
    ]);
  });

  it("who are ill leave their positions", () => {
    const { name, set, notes } = tried(FERNCOTE, "--ill evisceration=2,hanging=1");
    expect(name).toBe("two ill at evisceration, one ill at hanging");
    expect(set).toEqual({ "crews.evisceration.people": 2, "crews.hanging.people": 2 });
    expect(notes).toEqual(["Who is ill is not paid in these figures: add sick pay where you owe it."]);
  });

  it("by shift are fewer in every shift that the crew works", () => {
    const json = {
      ...SMALL_PLAN,
      day: { shifts: [...SMALL_PLAN.day.shifts, { name: "late", from: "08:00", to: "10:00" }], start: "05:30" },
      crews: [{ name: "dressing", people: { early: 3 } }],
    };
    expect(tried(json, "--ill dressing=1").set).toEqual({ "crews.dressing.people": { early: 2 } });
    const both = { ...json, crews: [{ name: "dressing", people: { early: 3, late: 2 } }] };
    expect(tried(both, "--ill dressing=1").set).toEqual({ "crews.dressing.people": { early: 2, late: 1 } });
    expect(faultsOf(both, "--ill dressing=3")).toEqual([
      "--ill dressing=3: the crew 'dressing' has only two; allowed: 1 to 2; name fewer",
    ]);
  });

  it("more of them get a position where all have people, at the station of the crew's name, and it is said", () => {
    const { set, notes } = tried(FIRST, "--more evisceration=1");
    expect(set).toEqual({ "crews.evisceration.people": 4, "line.evisceration.positions": 4 });
    expect(notes).toEqual([
      "One position was added at 'evisceration', since all positions of the crew 'evisceration' had people. Check that there is room for it.",
    ]);
    const short = { ...FIRST, crews: [{ name: "evisceration", people: 2 }] };
    expect(tried(short, "--more evisceration=1").set).toEqual({ "crews.evisceration.people": 3 });
    expect(tried(short, "--more evisceration=3").set).toMatchObject({ "line.evisceration.positions": 5 });
  });

  it("of several stations' crews get it at the slowest, or at the station that was named", () => {
    const { set, notes } = tried(FERNCOTE, "--more maintenance=1");
    expect({ set, notes }).toEqual({ set: { "crews.maintenance.people": 2 }, notes: [] });
    const trim = tried(FERNCOTE, "--more trim=2");
    expect(trim.name).toBe("two more at final trim");
    expect(trim.notes[0]).toBe("'trim' is worked by the crew 'final trim': it has the people counted as more.");
    expect(people(trim.plan, "final trim")).toEqual([4]);
    // Two at final trim and one at trim: one of the two has a position already.
    expect(trim.set["line.trim.positions"]).toBe(2);
    const station = tried(TAVELMOSS, "--more evisceration=1");
    expect(Object.keys(station.set)).toEqual([
      "crews.evisceration.people",
      'line["evisceration chain"].stations.evisceration.positions',
    ]);
  });

  it("moved are fewer here and more there", () => {
    const { name, plan } = tried(FERNCOTE, "--move hanging:evisceration");
    expect(name).toBe("one moved from hanging to evisceration");
    expect([people(plan, "hanging"), people(plan, "evisceration")]).toEqual([[2], [5]]);
    expect(people(tried(FERNCOTE, "--move hanging:evisceration=2").plan, "hanging")).toEqual([1]);
    const twice = tried(FERNCOTE, "--ill hanging=1", "--move hanging:evisceration");
    expect(twice.set["crews.hanging.people"]).toBe(1);
    expect(faultsOf(FERNCOTE, "--move hanging:hanging")[0]).toMatch(/both are the crew 'hanging'/);
  });
});

describe("animals", () => {
  const heads = (json: unknown, ...words: string[]) => {
    const { supply } = tried(json, ...words).plan;
    if (supply.kind !== "loads") return supply.heads;
    return supply.loads.reduce((sum, { crates, headsPerCrate }) => sum + crates * headsPerCrate, 0);
  };
  const today = 8 * 47 * 12;

  it("more or fewer are exactly as many, in crates of their own size but for one", () => {
    expect(heads(FERNCOTE, "--extra 800 at 12:00")).toBe(today + 800);
    expect(heads(FERNCOTE, "--fewer 500")).toBe(today - 500);
    expect(heads(FERNCOTE, "--fewer 1000")).toBe(today - 1000);
    expect(heads(FIRST, "--extra 7")).toBe(5007);
    expect(heads(FIRST, "--fewer 4999")).toBe(1);
    expect(heads({ ...FIRST, supply: { saturated: { heads: 50 } } }, "--fewer 10")).toBe(40);
  });

  it("more come on lorries of today's size at that hour, the others as they were", () => {
    const { plan } = tried(FERNCOTE, "--extra 800 at 12:00");
    const before = readPlan(FERNCOTE, FILES).plan!.supply;
    if (plan.supply.kind !== "loads" || before.kind !== "loads") throw new Error("no loads");
    expect(plan.supply.loads.slice(0, 8)).toEqual(before.loads);
    const added = plan.supply.loads
      .slice(8)
      .map(({ name, atSeconds, crates, headsPerCrate }) => [name, atSeconds, crates, headsPerCrate]);
    expect(added).toEqual([
      ["extra lorry", 7 * 3600, 47, 12],
      ["extra lorry 2", 7 * 3600, 19, 12],
      ["extra lorry 2, last crate", 7 * 3600, 1, 8],
    ]);
  });

  it("fewer are left off the lorries that come last, whatever their place in the file", () => {
    const loads = [
      { name: "late", at: "07:00", crates: 10, headsPerCrate: 12 },
      { name: "early", at: "05:30", crates: 10, headsPerCrate: 12 },
    ];
    const found = tried({ ...SMALL_PLAN, supply: { loads } }, "--fewer 130").set["supply.loads"];
    expect(found).toEqual([
      { name: "early", at: "05:30", crates: 9, headsPerCrate: 12 },
      { name: "early, last crate", at: "05:30", crates: 1, headsPerCrate: 2 },
    ]);
    expect(faultsOf(SMALL_PLAN, "--fewer 480")).toEqual([
      "--fewer 480: only 480 heads come in all; allowed: 1 to 479; name fewer",
    ]);
  });

  it("come in waves, as many lorries in each as in another, the first ones of the day in the first", () => {
    const { name, notes, plan } = tried(FERNCOTE, "--lorries in waves at 05:00 and 09:30");
    expect(name).toBe("lorries in waves at 05:00 and 09:30");
    expect(notes).toEqual(["Of the 8 lorries 4 at 05:00, 4 at 09:30."]);
    const { supply, day } = plan;
    const due = supply.kind === "loads" ? supply.loads.map(({ atSeconds }) => day.startClockSeconds + atSeconds) : [];
    expect(due.map((seconds) => seconds / 3600)).toEqual([5, 5, 5, 5, 9.5, 9.5, 9.5, 9.5]);
    expect(tried(FERNCOTE, "--lorries in waves at 05:00, 07:00, 09:00").notes).toEqual([
      "Of the 8 lorries 3 at 05:00, 3 at 07:00, 2 at 09:00.",
    ]);
    expect(faultsOf(FERNCOTE, "--lorries in waves at 05:00")[0]).toMatch(/is one hour; allowed: two hours or more/);
    expect(faultsOf(FERNCOTE, "--lorries in waves at 09:00 and 05:00")[0]).toMatch(
      /has a wave before the one in front/,
    );
    expect(faultsOf(FERNCOTE, "--lorries in waves at noon and 05:00")).toHaveLength(1);
  });

  it("come on lorries that are spread, follow each other, or move together", () => {
    const due = (when: string) => tried(FERNCOTE, `--lorries ${when}`).notes[0];
    expect(due("every 45 min")).toMatch(/at 05:20, 06:05, 06:50, .*10:35\.$/);
    expect(due("first at 05:00")).toMatch(/at 05:00, 05:52, 06:44, .*11:04\.$/);
    expect(due("last at 12:24")).toMatch(/at 06:20, 07:12, .*12:24\.$/);
    expect(due("first at 05:00 every 1 h")).toMatch(/at 05:00, 06:00, .*12:00\.$/);
    expect(due("every 30 min last at 10:00")).toMatch(/at 06:30, 07:00, .*10:00\.$/);
    expect(due("spread first at 05:00 last at 12:00")).toMatch(/at 05:00, 06:00, .*12:00\.$/);
    const loads = [60, 75, 180].map((minutes, index) => {
      return {
        name: `lorry ${index}`,
        at: `0${5 + Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`,
        crates: 5,
        headsPerCrate: 12,
      };
    });
    expect(tried({ ...SMALL_PLAN, supply: { loads } }, "--lorries spread").notes).toEqual([
      "The lorries are due at 06:00, 07:00, 08:00.",
    ]);
    expect(faultsOf(FERNCOTE, "--lorries spread")[0]).toMatch(/come like that already/);
    for (const wrong of [
      "every",
      "often",
      "every 5",
      "spread every 5 min",
      "first at 10:00 last at 09:00",
      "every 0 min",
    ])
      expect(faultsOf(FERNCOTE, `--lorries ${wrong}`)).toHaveLength(1);
  });
});

describe("a lorry that is late", () => {
  const dues = (...words: string[]) => {
    const { supply } = tried(FERNCOTE, ...words).plan;
    return supply.kind === "loads" ? supply.loads.map(({ atSeconds }) => atSeconds) : [];
  };
  const today = dues("--ill hanging=1");

  it("is due so much later, and the others as planned", () => {
    expect(dues("--late first=60 min")).toEqual(today.map((due, index) => (index === 0 ? due + 3600 : due)));
    expect(dues("--late 3=20 min,last=5 min")).toEqual(
      today.map((due, index) => due + (index === 2 ? 1200 : index === today.length - 1 ? 300 : 0)),
    );
    expect(tried(FERNCOTE, "--late first=60 min").notes[0]).toMatch(
      /^It is due at \d\d:\d\d instead of \d\d:\d\d; the others as planned\.$/,
    );
  });

  it("has to be one that comes, and later", () => {
    expect(faultsOf(FERNCOTE, "--late 99=5 min")[0]).toMatch(
      /'99' is none of the 8 lorries; allowed: 'first', 'last', 1 to 8/,
    );
    expect(faultsOf(FERNCOTE, "--late first=0 min")[0]).toMatch(/'0 min' is no time later/);
    expect(faultsOf(FERNCOTE, "--late first=soon")).toHaveLength(1);
    expect(faultsOf(FIRST, "--late first=5 min")[0]).toMatch(/this plan has no lorries/);
  });
});

describe("wages", () => {
  it("change the pay of every crew that has one by the same share", () => {
    const pays = (plan: { crews: { payPerSecond?: number | null }[] }) =>
      plan.crews.map((crew) => JSON.stringify(crew));
    const { set, plan, name } = tried(FERNCOTE, "--wages 10%");
    expect(name).toBe("wages 10 % higher");
    expect(set["crews.hanging.pay"]).toBe("19.8 EUR/h");
    expect(set['crews["live animals"].pay']).toBe("18.7 EUR/h");
    expect(Object.keys(set)).toHaveLength(FERNCOTE.crews.length);
    expect(pays(plan)).not.toEqual(pays(tried(FERNCOTE, "--fewer 10").plan));
    expect(tried(FERNCOTE, "--wages -5%").name).toBe("wages 5 % lower");
  });

  it("are refused where they are no change, and where no crew is paid", () => {
    for (const text of ["0%", "-100%", "much", "10"])
      expect(faultsOf(FERNCOTE, `--wages ${text}`)[0]).toMatch(/is not a percentage here/);
    const unpaid = {
      ...SMALL_PLAN,
      money: undefined,
      crews: SMALL_PLAN.crews.map(({ name, people }) => ({ name, people })),
    };
    expect(faultsOf(JSON.parse(JSON.stringify(unpaid)), "--wages 10%")[0]).toMatch(/no crew of this plan has a pay/);
  });
});

describe("hours", () => {
  it("of breaks and shifts move, and the day begins in time for them", () => {
    expect(tried(FERNCOTE, "--break lunch=12:15").set).toEqual({ 'day.breaks["lunch break"].at': "12:15" });
    const { set, plan } = tried(FERNCOTE, "--shift day=04:30-14:00");
    expect(set).toEqual({ "day.start": "04:30", "day.shifts.day.from": "04:30", "day.shifts.day.to": "14:00" });
    expect(plan.day.shifts[0]).toMatchObject({ fromSeconds: 0, toSeconds: 9.5 * 3600 });
  });

  it("of a second shift are worked by everybody, or by those who are named", () => {
    const all = tried(FERNCOTE, "--second-shift 14:30-17:00");
    expect(all.plan.day.shifts.map(({ name }) => name)).toEqual(["day", "second shift"]);
    expect(people(all.plan, "hanging")).toEqual([3, 3]);
    const few = tried(FERNCOTE, "--second-shift 14:30-17:00 with evisceration=2,hanging=0");
    expect([people(few.plan, "evisceration"), people(few.plan, "hanging"), people(few.plan, "kill")]).toEqual([
      [4, 2],
      [3, 0],
      [2, 2],
    ]);
    const byShift = tried(SMALL_PLAN, "--second-shift 09:00-10:00 as early");
    expect(people(byShift.plan, "dressing")).toEqual([3, 3]);
    const then = tried(FERNCOTE, "--second-shift 14:30-17:00 with hanging=1", "--ill hanging=1");
    expect(people(then.plan, "hanging")).toEqual([2, 0]);
  });

  it("at which a machine is down are a stop of that stage alone", () => {
    const { plan, name } = tried(FERNCOTE, "--down skinning=09:00-10:00", "--down skinning=11:00-11:15");
    expect(name).toBe("skinning down 09:00-10:00, skinning down 11:00-11:15");
    expect(plan.day.breaks.slice(2)).toMatchObject([
      {
        name: "skinning down",
        atSeconds: 4 * 3600,
        lengthSeconds: 3600,
        crews: [],
        stages: ["skinning"],
        ends: "at its time",
      },
      { name: "skinning down 2", atSeconds: 6 * 3600, lengthSeconds: 900 },
    ]);
    expect(tried(TAVELMOSS, "--down evisceration chain=09:00-09:30").plan.day.breaks.at(-1)!.stages).toEqual([
      "evisceration chain",
    ]);
  });
});

describe("stations", () => {
  it("get places before them, troughs places in them", () => {
    expect(tried(FERNCOTE, "--places skinning=20").set).toEqual({ "line.skinning.buffer": 20 });
    expect(tried(FERNCOTE, "--places bleeding=40,skinning=no limit").set).toEqual({
      "line.bleeding.places": 40,
      "line.skinning.buffer": null,
    });
  });

  it("get faster or slower by the hour's speed, on top of what the plan says of it", () => {
    expect(tried(FERNCOTE, "--faster evisceration=10%").set).toEqual({
      "line.evisceration.pace": [{ from: "05:00", speed: 1.1 }],
    });
    const paced = structuredClone(FIRST);
    paced.line[1].pace = [{ from: "08:00", speed: 0.9 }, { from: "10:00" }];
    expect(tried(paced, "--slower evisceration=10 %").set).toEqual({
      "line.evisceration.pace": [
        { from: "06:00", speed: 0.9 },
        { from: "08:00", speed: 0.81 },
        { from: "10:00", speed: 0.9 },
      ],
    });
    expect(faultsOf(FERNCOTE, "--faster chilling=10%")[0]).toMatch(
      /'chilling' is not a stage where that can be changed/,
    );
    expect(faultsOf(FERNCOTE, "--slower hanging=95%")[0]).toMatch(/at most 90 %/);
  });
});

describe("tries", () => {
  it("stand between --or, each with the plan as it is today", () => {
    const { tries } = triesOf(FERNCOTE, "--ill hanging=1", "--or", "--ill hanging=1", "--more hanging=1");
    expect(tries!.map(({ name }) => name)).toEqual(["one ill at hanging", "one ill at hanging, one more at hanging"]);
    expect(tries!.map(({ set }) => set["crews.hanging.people"])).toEqual([2, 3]);
  });

  it("have names that a study takes, and that are told apart", () => {
    const words = ["--ill hanging=1", "--ill evisceration=1", "--ill skinning=1", "--ill kill=1"];
    const { tries } = triesOf(
      FERNCOTE,
      ...words,
      "--or",
      ...words.slice(0, 3),
      "--ill inspection=1",
      "--or",
      "--ill kill=2",
    );
    const names = tries!.map(({ name }) => name);
    expect(names[0]).toBe("one ill at hanging and 3 changes more");
    expect(names[1]).toBe("one ill at hanging and 3 changes more (2)");
    expect(names.every((name) => [...name].length <= 60)).toBe(true);
    expect(new Set(names).size).toBe(3);
  });

  it("with 'or' between the values of an option are one each, put together with those of other options", () => {
    const names = (...words: string[]) => triesOf(FERNCOTE, ...words).tries?.map(({ name }) => name);
    expect(names("--break lunch=11:45 or 12:15")).toEqual(["lunch break at 11:45", "lunch break at 12:15"]);
    expect(names("--extra 400 or 800 at 12:00", "--or", "--fewer 300")).toEqual([
      "400 heads more at 12:00",
      "800 heads more at 12:00",
      "300 heads fewer",
    ]);
    expect(names("--ill hanging=1 or 2", "--fewer 300 or 500")).toEqual([
      "one ill at hanging, 300 heads fewer",
      "one ill at hanging, 500 heads fewer",
      "two ill at hanging, 300 heads fewer",
      "two ill at hanging, 500 heads fewer",
    ]);
    expect(names("--lorries every 45 min or spread last at 12:00")).toEqual([
      "lorries every 45 min",
      "lorries spread last at 12:00",
    ]);
    expect(names("--places skinning=20 or no limit")).toEqual([
      "20 places before skinning",
      "no limit of places before skinning",
    ]);
    const many = Array.from({ length: 41 }, (_, index) => index + 1).join(" or ");
    expect(faultsOf(FERNCOTE, `--fewer ${many}`)[0]).toMatch(/^gambrel try: 41 tries; allowed: at most 40/);
  });

  it("are none where nothing is written: then today's plan is asked about", () => {
    expect(triesOf(FERNCOTE)).toEqual({ tries: [], faults: [] });
  });

  it("that are empty or the same twice are refused", () => {
    expect(faultsOf(FERNCOTE, "--or", "--ill hanging=1")[0]).toMatch(/^--or: try 1 has no option/);
    expect(faultsOf(FERNCOTE, "--ill hanging=1", "--or", "--ill hanging=1")[0]).toMatch(/is tried twice/);
  });

  it("with a wrong name are met by the nearest right one, all faults at once", () => {
    const faults = faultsOf(
      FERNCOTE,
      ...["--ill eviscerration=2", "--more skining=1", "--break lunsh=12:00", "--shift dayy=06:00-14:00"],
      ...["--or", "--down skinnin=09:00-10:00", "--places bleding=3", "--second-shift 14:30-17:00 as dy"],
    );
    const meant = ["evisceration", "skinning", "lunch break", "day", "skinning", "bleeding", "day"];
    expect(faults.map((fault) => /did you mean '(.*)'\?/.exec(fault)?.[1])).toEqual(meant);
  });

  it("of what a plan has not are told so", () => {
    const bare = {
      ...FIRST,
      crews: [],
      line: FIRST.line.map(({ crew: _, ...stage }: Record<string, unknown>) => stage),
    };
    const faults = faultsOf(bare, "--ill hanging=1", "--lorries spread", "--break lunch=12:00", "--extra 5 at 12:00");
    expect(faults).toEqual([
      expect.stringMatching(/this plan has no crews, so it knows of no people/),
      expect.stringMatching(/this plan has no lorries: its animals come one by one/),
      expect.stringMatching(/this plan has no breaks, so none can be moved/),
      expect.stringMatching(/this plan has no lorries, so its animals come at no hour/),
    ]);
    expect(faultsOf(FERNCOTE, "--ill four-leg cutting=1")[0]).toMatch(
      /nobody works at 'four-leg cutting', it is a machine/,
    );
  });

  it.each(TRY_OPTIONS)("say what may be written where --%s gets nonsense", (option) => {
    const faults = faultsOf(FERNCOTE, `--${option} ?`);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(/^--[\w-]+ \?: .*; allowed: .*/);
  });
});
