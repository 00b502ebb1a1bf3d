import { Argument, Command } from "commander";
import { DANGERS_IN_SHORT } from "../../viz/report/cautions.ts";
import { withExamples } from "./commandTree.ts";
import {
  alternativeOption,
  answerOption,
  byOption,
  calibrationDaysOption,
  ceilingOption,
  concurrencyOption,
  daysOfWorldOption,
  inWorldsOption,
  jsonOption,
  layoutDaysOption,
  lostAfterOption,
  moreOption,
  overwriteOption,
  portOption,
  queueOption,
  replicationsOption,
  resumeOption,
  SCHEMA_KINDS,
  samplesOption,
  seedOption,
  simulatedDaysOption,
  studyTracesOption,
  threadsOption,
  tracesOption,
  unitOption,
  verifyOption,
  whichDayOption,
  worldsOption,
} from "./options.ts";
import { programVersion } from "./project.ts";
import type { Terminal } from "./terminal.ts";
import { addTryOptions, mattersOption, tryDaysOption, weeksOption } from "./tryOptions.ts";

const ABOUT =
  "Simulates a rabbit (small-animal) slaughter and processing line: one day of a plan, or many days to answer a question.";

const AFTER = `
Start with: gambrel demo, or gambrel new and then gambrel day PLAN. gambrel COMMAND --help has examples.
Messages go to standard error, data (--json, schema, fit) to standard output.

Exit codes:
  0    done
  1    failed
  2    bad input (arguments, plan, study, table or folder): all faults are listed, nothing is written
  130  stopped with Ctrl-C: the simulated days are kept beside the run's folder; continue with --resume
  143  stopped with SIGTERM: likewise
  129  stopped because the terminal was closed: likewise

NO_COLOR=1 switches colours off. GAMBREL_DEBUG=1 shows where in the program a failure arose.

${DANGERS_IN_SHORT.join("\n")}`;

const REPORT_FOLDER = "write report, charts and tables to this folder (default: write nothing)";
const RESULTS_AS_JSON = "print the results as JSON to standard output";

type Speak = () => Promise<Terminal>;

/**
 * The command line. Each command is loaded when it is called, so that --help and --version answer at once; `terminal`
 * gives the place to speak to, loaded as late.
 */
export function program(terminal: Speak): Command {
  const gambrel = new Command("gambrel").description(ABOUT).version(programVersion()).addHelpText("after", AFTER);
  // Throwing instead of leaving the process lets main.ts choose the exit code; sub-commands inherit it.
  gambrel.exitOverride().showHelpAfterError("(gambrel --help lists commands; gambrel COMMAND --help lists options)");
  for (const add of ENTRIES) add(gambrel, terminal);
  return gambrel;
}

function addCheck(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("check")
    .description("check plans, studies and other questions, and list every fault with its remedy")
    .argument("<file...>", "one or more files of any kind")
    .option("--responses", "list what a study of the plan can be asked for, with units: of what is alike one example")
    .option("--more", "with --responses: every key")
    .addOption(jsonOption("print the findings as JSON to standard output"))
    .addOption(ceilingOption())
    .action(async (files, options) => {
      const { checkCommand } = await import("./commands/check.ts");
      await checkCommand(await terminal(), files, options);
    });
  withExamples(command, [
    ["gambrel check plant.json", "one plan"],
    ["gambrel check plant.json buffers.json weekly.json", "a plan, a study and a demand together"],
    ["gambrel check --responses plant.json", "what a study of this plan can be asked for, with units"],
  ]);
}

function addNew(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("new")
    .description("ask for heads, hours, lorries, steps and people, and write a plan that runs")
    .argument("[file]", "file to write (default: the name of the plant)")
    .option("--yes", "ask nothing: take the usual answers, which are guesses")
    .addOption(answerOption())
    .action(async (file, options) => {
      const { newCommand } = await import("./commands/new.ts");
      await newCommand(await terminal(), file, options);
    });
  withExamples(command, [
    ["gambrel new plant.json", "in a terminal: asks; Enter takes the usual answer"],
    ['gambrel new plant.json --yes --set heads=1200 --set "people=evisceration 4"', "no questions, two own answers"],
    ["gambrel new plant.json < answers.txt", "from a file with a line for each question, empty for the usual answer"],
  ]);
}

function addDay(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("day")
    .description("simulate one day of a plan and say what happened")
    .argument("<plan>", "plan file")
    .addOption(seedOption().default("1"))
    .addOption(whichDayOption())
    .addOption(tracesOption().default("binned"))
    .addOption(verifyOption())
    .option("--out <folder>", REPORT_FOLDER)
    .addOption(overwriteOption())
    .addOption(jsonOption(RESULTS_AS_JSON))
    .addOption(ceilingOption())
    .action(async (plan, options) => {
      const { dayCommand } = await import("./commands/day.ts");
      await dayCommand(await terminal(), plan, options);
    });
  withExamples(command, [
    ["gambrel day plant.json", "the first day of seed 1, in words"],
    ["gambrel day plant.json --day 3 --out runs/day-3", "the third day, with report and charts"],
    ["gambrel day plant.json --json > day.json", "the results for another program"],
  ]);
}

function addWeek(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("week")
    .description("simulate the week of a plan many times, and say what each day and the week come to")
    .argument("<plan>", "plan file with a week")
    .addOption(seedOption().default("1"))
    .addOption(weeksOption())
    .addOption(verifyOption())
    .addOption(threadsOption())
    .option("--out <folder>", REPORT_FOLDER)
    .addOption(overwriteOption())
    .addOption(jsonOption(RESULTS_AS_JSON))
    .addOption(ceilingOption())
    .action(async (plan, options) => {
      const { weekCommand } = await import("./commands/week.ts");
      await weekCommand(await terminal(), plan, options);
    });
  withExamples(command, [
    ["gambrel week plant-week.json", "20 weeks, day by day"],
    ["gambrel week plant-week.json --weeks 100 --out runs/week", "narrower ranges, with a report and the week board"],
    ["gambrel week plant-week.json --json > week.json", "the results for another program"],
  ]);
}

function addSeason(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("season")
    .description("simulate the weeks of a year that differ in animals, weight and absence, and tell the year")
    .argument("<season>", "file with the weeks of a season")
    .addOption(seedOption())
    .addOption(weeksOption().default(undefined, "as the file says"))
    .addOption(threadsOption())
    .option("--out <folder>", REPORT_FOLDER)
    .addOption(overwriteOption())
    .addOption(jsonOption("print the findings as JSON to standard output"))
    .addOption(ceilingOption())
    .action(async (path, options) => {
      const { seasonCommand } = await import("./commands/season.ts");
      await seasonCommand(await terminal(), path, options);
    });
  withExamples(command, [
    ["gambrel season year.json", "the year in words: the hardest weeks, overtime, late orders, people"],
    ["gambrel season year.json --out runs/year", "the year as a picture, too, and the weeks that it rests on"],
  ]);
}

function addStudy(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("study")
    .description("simulate variants of a plan, compare them on the same days, and write the report")
    .argument("<study>", "study file")
    .addOption(seedOption())
    .addOption(replicationsOption())
    .addOption(studyTracesOption().default(undefined, '"binned"'))
    .addOption(verifyOption())
    .option("--out <folder>", 'folder to write to (default: "runs/" and the name of the study)')
    .addOption(overwriteOption())
    .addOption(resumeOption())
    .addOption(threadsOption())
    .addOption(queueOption().conflicts("threads"))
    .addOption(jsonOption(`${RESULTS_AS_JSON}; a folder is then written only with --out`))
    .addOption(moreOption())
    .addOption(ceilingOption())
    .action(async (study, options) => {
      const { studyCommand } = await import("./commands/study.ts");
      await studyCommand(await terminal(), study, options);
    });
  withExamples(command, [
    ["gambrel study buffers.json", "as many days as the study says, on every core of this machine"],
    ["gambrel study buffers.json --replications 10 --out runs/try", "a quick try with 10 days of each variant"],
    ["gambrel study buffers.json --resume", "continue a run that was stopped"],
  ]);
}

function addWhy(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("why")
    .description("say why work ends when it does, try changes to the plan, and say which to make first")
    .argument("<plan>", "plan file")
    .addOption(seedOption().default("1"))
    .option("--on <day>", "of a plan with a week: this day of it (default: the day that decides the week)")
    .addOption(
      replicationsOption("days (of a plan with a week: weeks) to simulate of the plan and of each change").default(
        undefined,
        "20; 8 weeks",
      ),
    )
    .addOption(threadsOption())
    .option("--out <folder>", REPORT_FOLDER)
    .addOption(overwriteOption())
    .addOption(jsonOption(RESULTS_AS_JSON))
    .addOption(ceilingOption())
    .action(async (plan, options) => {
      const { whyCommand } = await import("./commands/why.ts");
      await whyCommand(await terminal(), plan, options);
    });
  withExamples(command, [
    ["gambrel why plant.json", "20 days of the plan and of each change"],
    ["gambrel why plant.json --replications 60 --out runs/why", "narrower ranges, with a report"],
    ["gambrel why plant-week.json --on Wednesday", "one day of a week, beginning with what the days before left"],
  ]);
}

function addTry(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("try")
    .description("say what a day comes to if people are ill, lorries late, machines down, and what copes best")
    .argument("<plan>", "plan file");
  const given = addTryOptions(command);
  command
    .option("--decides <result>", "result that decides (default: the end of work, where a plan has one)")
    .option("--also <result...>", "results to tell besides")
    .option("--reader <who>", "for whom it is written: planner, engineer, owner, veterinarian, trainer", "planner")
    .addOption(mattersOption())
    .addOption(tryDaysOption())
    .addOption(seedOption().default("1"))
    .option("--as-study <file>", "write the question as a study file, and simulate nothing")
    .addOption(threadsOption())
    .option("--out <folder>", REPORT_FOLDER)
    .addOption(overwriteOption())
    .addOption(jsonOption(RESULTS_AS_JSON))
    .addOption(ceilingOption())
    .action(async (plan, options) => {
      const { tryCommand } = await import("./commands/try.ts");
      await tryCommand(await terminal(), plan, given, options);
    });
  withExamples(command, [
    ["gambrel try plant.json --ill evisceration=2 hanging=1", "two are ill at evisceration and one at hanging"],
    [
      "gambrel try plant.json --ill skinning=1 --or --ill skinning=1 --move hanging:skinning",
      "does it help to move one person?",
    ],
    ['gambrel try plant.json --extra "800 at 12:00" --out runs/extra', "800 heads more at noon, with a report"],
    [
      'gambrel try plant.json --extra "800 at 12:00" --second-shift "14:30-17:00 with hanging=2"',
      "with a short second shift",
    ],
    [
      'gambrel try plant.json --lorries "spread last at 12:00" --or --lorries "every 45 min"',
      "lorries at even distances, or closer together",
    ],
    [
      'gambrel try plant.json --break "lunch=11:45 or 12:15" --matters "finish=10 min"',
      "which is the better hour for lunch? Each is a try",
    ],
    ["gambrel try plant.json --decides cost.overtimePay", "what today's plan pays for overtime, a day, month and year"],
    ["gambrel try plant.json --shift day=05:30-14:00 --decides overtime", "an earlier shift, judged by its overtime"],
    [
      "gambrel try plant.json --down skinning=09:00-10:00 --places skinning=20",
      "an hour without the skinning machine, with more room before it",
    ],
    [
      "gambrel try plant.json --more skinning=1 --or --faster skinning=10% --as-study tries.json",
      "the same as a study file",
    ],
  ]);
}

function addReport(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("report")
    .description("redraw the report and charts of a finished run; export to PNG, PDF or a workbook")
    .argument("<run>", "folder of a finished run")
    .option("--png", "also write the charts as PNG (needs an installed browser)")
    .option("--pdf", "also write the report as PDF (needs an installed browser)")
    .option("--xlsx", "also write a workbook: summary, inputs and the figures behind every chart")
    .action(async (folder, options) => {
      const { reportCommand } = await import("./commands/report.ts");
      await reportCommand(await terminal(), folder, options);
    });
  withExamples(command, [
    ["gambrel report runs/buffers", "redraw report.html and the charts"],
    ["gambrel report runs/buffers --xlsx --pdf", "also a workbook and a PDF"],
  ]);
}

function addWorker(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("worker")
    .description("simulate days for studies that share a queue, on any number of machines; Ctrl-C ends it")
    .addOption(queueOption().makeOptionMandatory())
    .addOption(concurrencyOption())
    .addOption(lostAfterOption())
    .addOption(ceilingOption())
    .action(async (options) => {
      const { workerCommand } = await import("./commands/worker.ts");
      await workerCommand(await terminal(), options);
    });
  withExamples(command, [
    ["gambrel worker --queue redis://127.0.0.1:6379", "every core of this machine"],
    ["gambrel worker --queue redis://127.0.0.1:6379 --concurrency 2", "two days at a time"],
  ]);
}

function addFit(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("fit")
    .description("turn stopwatch times (CSV) into distributions, and print what to put into the plan")
    .argument("<times>", 'CSV file: one column for each station, headed "STATION (UNIT)", one time in each cell')
    .addOption(unitOption())
    .addOption(byOption())
    .addOption(samplesOption())
    .option("--uncertain", "also print how well each figure is known, for gambrel doubt")
    .addOption(seedOption().default("1"))
    .option(
      "--out <folder>",
      "write pictures, results and the part of the plan to this folder (default: write nothing)",
    )
    .addOption(overwriteOption())
    .addOption(jsonOption("print all results as JSON to standard output, instead of the part of the plan"))
    .addOption(ceilingOption())
    .action(async (times, options) => {
      const { fitCommand } = await import("./commands/fit.ts");
      await fitCommand(await terminal(), times, options);
    });
  withExamples(command, [
    ["gambrel fit times.csv", "checks, fits and the part of a plan to copy"],
    ["gambrel fit times.csv --by station --unit s --out runs/times", "one column of times, with pictures"],
    ["gambrel fit times.csv --uncertain", "the part of the plan says, too, how well so few times tell it"],
  ]);
}

function addCalibrate(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("calibrate")
    .description("compare a plan with observed days, and say which figure would explain a gap")
    .argument("<plan>", "plan file")
    .argument(
      "<observed>",
      'CSV file: one row for each day, columns such as "06:00-07:00" (heads counted) and "finish"',
    )
    .option("--at <stage>", "stage after which heads were counted (default: the last station)")
    .addOption(calibrationDaysOption())
    .option("--uncertain", "also narrow the plan's uncertain figures by the observed days, and print them")
    .addOption(seedOption().default("1"))
    .option("--out <folder>", "write the picture and results to this folder (default: write nothing)")
    .addOption(overwriteOption())
    .addOption(jsonOption("print all results as JSON to standard output"))
    .addOption(ceilingOption())
    .action(async (plan, observed, options) => {
      const { calibrateCommand } = await import("./commands/calibrate.ts");
      await calibrateCommand(await terminal(), plan, observed, options);
    });
  withExamples(command, [
    ["gambrel calibrate plant.json observed.csv", "40 simulated days against those observed"],
    ["gambrel calibrate plant.json observed.csv --at skinning --days 100", "heads were counted after skinning"],
    ["gambrel calibrate plant.json observed.csv --uncertain", "what the uncertain figures may still be"],
  ]);
}

function addSize(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("size")
    .description(
      "size kinds of plant from a demand, side by side; write the plan of one, or a dossier: what to build, and why",
    )
    .argument("<demand>", "demand file")
    .addOption(alternativeOption())
    .addOption(seedOption().default("1"))
    .addOption(simulatedDaysOption())
    .addOption(threadsOption())
    .option(
      "--out <path>",
      "a name that ends in .json: write the plan to this file; else write the dossier to this folder (default: write nothing)",
    )
    .option("--uncertain", "write into the plan that what the demand left to be assumed may be a third off")
    .option("--overwrite", "replace that file or folder if it exists")
    .addOption(jsonOption("print the design and the simulated results as JSON to standard output"))
    .addOption(ceilingOption())
    .action(async (demand, options) => {
      const { sizeCommand } = await import("./commands/size.ts");
      await sizeCommand(await terminal(), demand, options);
    });
  withExamples(command, [
    ["gambrel size weekly.json", "all kinds of plant side by side"],
    [
      'gambrel size weekly.json --alternative "compact plant" --uncertain --out plant.json',
      "write the plan of one kind, and what was assumed for it as guesses",
    ],
    ["gambrel size market.json --out runs/dossier", "the whole answer: documents, drawing, workbook, every plan"],
  ]);
}

function addLayout(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("layout")
    .description("draw the plant of a plan at 1:100, and list what has to be bought and connected for it")
    .argument("<plan>", "plan file")
    .addOption(seedOption().default("1"))
    .addOption(layoutDaysOption())
    .option("--out <folder>", "write drawing, report and tables to this folder (default: write nothing)")
    .addOption(overwriteOption())
    .option("--pdf", "also write the drawing as PDF at 1:100 (needs an installed browser)")
    .addOption(jsonOption("print layout, equipment and connections as JSON to standard output"))
    .addOption(ceilingOption())
    .action(async (plan, options) => {
      const { layoutCommand } = await import("./commands/layout.ts");
      await layoutCommand(await terminal(), plan, options);
    });
  withExamples(command, [
    ["gambrel layout plant.json", "floor, connection and what does not fit, in words"],
    [
      "gambrel layout plant.json --out runs/layout --pdf",
      "the drawing at 1:100 as SVG and PDF, with report and tables",
    ],
  ]);
}

function addOptions(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("options")
    .description("compare what suppliers offer: net present value and payback of each, with ranges")
    .argument("<offers>", "file with a plan, and the offers as changes to it with their prices")
    .addOption(seedOption())
    .addOption(replicationsOption())
    .addOption(inWorldsOption())
    .addOption(threadsOption())
    .option("--out <folder>", REPORT_FOLDER)
    .addOption(overwriteOption())
    .addOption(jsonOption("print the comparison and the simulated results as JSON to standard output"))
    .addOption(ceilingOption())
    .action(async (path, options) => {
      const { optionsCommand } = await import("./commands/options.ts");
      await optionsCommand(await terminal(), path, options);
    });
  withExamples(command, [
    ["gambrel options offers.json", "what each offer is worth"],
    ["gambrel options offers.json --worlds 40", "in how many of 100 worlds each pays, where figures are not known"],
    ["gambrel options offers.json --replications 100 --out runs/offers", "narrower ranges, with a report"],
  ]);
}

function addDoubt(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("doubt")
    .description("say how much of an answer is luck and how much is figures nobody knows, and which to measure next")
    .argument("<question>", "plan or study file; the plan says which figures are uncertain")
    .addOption(worldsOption())
    .addOption(daysOfWorldOption())
    .option(
      "--within <amount>",
      'add worlds, at least cost, until chance moves the mean by no more than this: "2 min", "1 %", or a number',
    )
    .addOption(seedOption())
    .addOption(threadsOption())
    .addOption(queueOption())
    .option("--out <folder>", "write a report, pictures and all figures to this folder (default: write nothing)")
    .addOption(overwriteOption())
    .addOption(resumeOption())
    .addOption(jsonOption(RESULTS_AS_JSON))
    .addOption(ceilingOption())
    .action(async (path, options) => {
      const { doubtCommand } = await import("./commands/doubt.ts");
      await doubtCommand(await terminal(), path, options);
    });
  withExamples(command, [
    ["gambrel doubt plant.json", "40 worlds of 4 days: when work ends, and which figure to time first"],
    ["gambrel doubt plant.json --within 2min", "as many worlds and days as that takes"],
    ["gambrel doubt offers.json --worlds 160 --out runs/doubt", "which variant to choose, more surely"],
  ]);
}

function addImprove(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("improve")
    .description("find the best way to share out places, people or a budget")
    .argument("<question>", "file that says what to share out, and to what end")
    .addOption(seedOption())
    .addOption(inWorldsOption())
    .addOption(threadsOption())
    .option("--out <folder>", REPORT_FOLDER)
    .addOption(overwriteOption())
    .addOption(resumeOption())
    .addOption(jsonOption("print the findings as JSON to standard output"))
    .addOption(ceilingOption())
    .action(async (path, options) => {
      const { improveCommand } = await import("./commands/improve.ts");
      await improveCommand(await terminal(), path, options);
    });
  withExamples(command, [
    ["gambrel improve places.json --out runs/places", "search, and write the report"],
    ["gambrel improve places.json --out runs/places --resume", "continue a search that was stopped"],
  ]);
}

function addSchema(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("schema")
    .description("print the JSON Schema of a kind of file, with which editors complete and check it")
    .addArgument(new Argument("<kind>", "kind of file").choices(SCHEMA_KINDS))
    .action(async (kind) => {
      const { schemaCommand } = await import("./commands/schema.ts");
      schemaCommand(await terminal(), kind);
    });
  withExamples(command, [
    ["gambrel schema plan > plan.schema.json", "for plan files"],
    ["gambrel schema study > study.schema.json", "for study files"],
  ]);
}

function addPage(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("page")
    .description("open the live page: watch the line, change it, play the lessons; for this machine alone")
    .argument("[plan]", "plan file to open (default: an example)")
    .addOption(portOption())
    .option("--no-open", "say the address, and do not open the browser")
    .action(async (plan, options) => {
      const { pageCommand } = await import("./commands/page.ts");
      await pageCommand(await terminal(), plan, options);
    });
  withExamples(command, [
    ["gambrel page", "an invented example plant"],
    ["gambrel page plant.json", "your plan; reload the page after a change"],
    ["gambrel page plant.json --port 8080 --no-open", "at an address of your choice"],
  ]);
}

function addDemo(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("demo")
    .description("run the example studies that come with the program (an invented plant)")
    .addOption(seedOption())
    .addOption(replicationsOption())
    .addOption(studyTracesOption())
    .addOption(threadsOption())
    .option("--out <folder>", "folder for the runs; an earlier demo there is replaced", "runs/demo")
    .addOption(jsonOption("also print the results as a JSON list to standard output"))
    .action(async (options) => {
      const { demoCommand } = await import("./commands/demo.ts");
      await demoCommand(await terminal(), options);
    });
  withExamples(command, [
    ["gambrel demo", "two to three minutes; reports in runs/demo"],
    ["gambrel demo --replications 5 --out runs/quick", "a quick look, with wide ranges"],
  ]);
}

function addCompletion(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("completion")
    .description("print the script that makes a shell complete commands and options; its first line says where it goes")
    .addArgument(new Argument("<shell>", "your shell").choices(["bash", "zsh", "fish"]))
    .action(async (shell) => {
      const { completionCommand } = await import("./commands/completion.ts");
      completionCommand(await terminal(), gambrel, shell);
    });
  withExamples(command, [
    ["gambrel completion bash > ~/.gambrel-completion", "then: source ~/.gambrel-completion"],
    ["gambrel completion fish > ~/.config/fish/completions/gambrel.fish", "for every new fish"],
  ]);
}

function addManual(gambrel: Command, terminal: Speak): void {
  const command = gambrel
    .command("manual")
    .description("print the whole manual")
    .option("--page", "as a page for man")
    .action(async (options) => {
      const { manualCommand } = await import("./commands/manual.ts");
      manualCommand(await terminal(), gambrel, options);
    });
  withExamples(command, [
    ["gambrel manual", "as text"],
    ["gambrel manual --page > gambrel.1", "then: man ./gambrel.1"],
  ]);
}

/** In the order in which help, manual and completion list them. */
const ENTRIES = [
  addNew,
  addCheck,
  addDay,
  addWeek,
  addSeason,
  addStudy,
  addWhy,
  addTry,
  addSize,
  addLayout,
  addOptions,
  addDoubt,
  addImprove,
  addFit,
  addCalibrate,
  addReport,
  addPage,
  addDemo,
  addWorker,
  addSchema,
  addCompletion,
  addManual,
];
