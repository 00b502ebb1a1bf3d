import { type Command, InvalidArgumentError, Option } from "commander";

/** One of the options that change a plan, or the word between two tries, as it stood on the command line. */
export interface GivenOption {
  option: string;
  text: string;
}

/**
 * The options of `gambrel try` that change a plan, with their help. Those that take "..." may be given several values: with
 * blanks, or with a comma, which PowerShell turns into blanks.
 */
const CHANGES: readonly [flags: string, help: string][] = [
  ["--on <day...>", "of a plan with a week: what follows is on these days; before it, on every day"],
  ["--ill <crew=people...>", "people of a crew who are missing that day; its positions stay"],
  [
    "--more <crew=people...>",
    "people more; where all positions have people, positions more as well; each=1: a try of every crew",
  ],
  ["--move <crew:crew...>", "one person moved from a crew to another; hanging:evisceration=2 moves two"],
  ["--wages <percent>", "everybody's pay higher by 10%, or lower by -5%"],
  ["--extra <heads at hour>", 'more animals, on lorries like the last: "800 at 12:00"; without lorries: 800'],
  ["--fewer <heads>", "fewer animals; lorries that come last bring fewer"],
  [
    "--lorries <when>",
    '"spread", "every 45 min", "first at 05:00", "last at 12:00", or two of these together; or "in waves at 05:00 and 10:00"',
  ],
  ["--late <lorry=time...>", 'one lorry comes later: "first=60 min", "3=20 min"; the others as planned'],
  ["--break <name=hour...>", "a break begins then, and keeps its length"],
  ["--shift <name=from-to...>", "a shift from and to these hours; breaks stay where they are"],
  [
    "--second-shift <from-to>",
    'one shift more, with the people of the one before; "14:00-17:00 with hanging=2" names others',
  ],
  ["--down <station=from-to...>", "a station or chain stands still from and to these hours"],
  ["--places <stage=number...>", "places before a station, or in a trough or chiller"],
  ["--faster <station=percent...>", "a station or chain makes so much more an hour, all day"],
  ["--slower <station=percent...>", "a station or chain makes so much less an hour, all day"],
];

/** Adds these options to a command, and gives what stood there, in its order, once the command line is read. */
export function addTryOptions(command: Command): readonly GivenOption[] {
  const given: GivenOption[] = [];
  for (const [flags, help] of CHANGES) {
    const option = new Option(flags, help);
    command.addOption(option);
    command.on(`option:${option.name()}`, (text: string) => given.push({ option: option.name(), text }));
  }
  command.option(
    "--or",
    "what follows is another try, compared with those before; 'or' between values of an option does the same",
  );
  command.on("option:or", () => given.push({ option: "or", text: "" }));
  return given;
}

export function tryDaysOption(): Option {
  return countOption("--days <count>", "days (of a plan with a week: weeks) to simulate of the plan and of each try");
}

export function weeksOption(): Option {
  return countOption("--weeks <count>", "weeks to simulate");
}

function countOption(flags: string, help: string): Option {
  return new Option(flags, help).default(20).argParser((text: string) => {
    const days = Number(text);
    if (/^\d+$/.test(text) && days >= 2 && days <= 100_000) return days;
    throw new InvalidArgumentError("Give a whole number from 2 to 100000.");
  });
}

export function mattersOption(): Option {
  return new Option(
    "--matters <result=amount...>",
    'least differences that matter to you: "finish=10 min", money=50 (a day)',
  ).default([], "5 min of an end of the day, 0.1 % of the heads, 1 % of other results");
}
