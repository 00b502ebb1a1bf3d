import { Argument, Command } from "commander";
import { DANGERS_IN_SHORT } from "../../viz/report/cautions.ts";
import {
  alternativeOption,
  byOption,
  calibrationDaysOption,
  ceilingOption,
  concurrencyOption,
  jsonOption,
  lostAfterOption,
  MOST_TRACED,
  overwriteOption,
  portOption,
  queueOption,
  replicationsOption,
  resumeOption,
  SCHEMA_KINDS,
  samplesOption,
  seedOption,
  simulatedDaysOption,
  threadsOption,
  tracesOption,
  unitOption,
  verifyOption,
  whichDayOption,
} from "./options.ts";
import { programVersion } from "./project.ts";
import type { Terminal } from "./terminal.ts";

const ABOUT =
  "Simulates rabbit (small-animal) slaughter and processing lines: one day, or a study that compares variants.";

const AFTER = `
Words for people go to standard error, data (--json, schema, fit) to standard output.

Exit codes:
  0    done
  1    failed
  2    bad input (arguments, plan, study, table or folder): every fault is listed, nothing is written
  130  stopped with Ctrl-C: the days done are kept beside the run's folder, and --resume goes on with them
  143  stopped with SIGTERM, likewise
  129  stopped because the terminal was closed, likewise

NO_COLOR=1 switches colours off; GAMBREL_DEBUG=1 shows where in the program a failure arose.

${DANGERS_IN_SHORT.join("\n")}`;

/**
 * The command line. Each command is loaded when it is called, so that --help and --version answer at once; `terminal`
 * gives the place to speak to, loaded as late.
 */
export function program(terminal: () => Promise<Terminal>): Command {
  const gambrel = new Command("gambrel").description(ABOUT).version(programVersion()).addHelpText("after", AFTER);
  // Throwing instead of leaving the process lets main.ts choose the exit code; sub-commands inherit it.
  gambrel.exitOverride().showHelpAfterError("(gambrel --help lists commands and options)");
  addCheck(gambrel, terminal);
  addDay(gambrel, terminal);
  addStudy(gambrel, terminal);
  addWhy(gambrel, terminal);
  addReport(gambrel, terminal);
  addWorker(gambrel, terminal);
  addFit(gambrel, terminal);
  addCalibrate(gambrel, terminal);
  addSize(gambrel, terminal);
  addOptions(gambrel, terminal);
  addImprove(gambrel, terminal);
  addSchema(gambrel, terminal);
  addPage(gambrel, terminal);
  addDemo(gambrel, terminal);
  addCompletion(gambrel, terminal);
  addManual(gambrel, terminal);
  return gambrel;
}

function addCheck(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("check")
    .description("read plans, studies, demands, options and questions, and list everything that is wrong with them")
    .argument("<file...>", "files (told apart by what they hold)")
    .addOption(jsonOption("print what was found as JSON on standard output"))
    .addOption(ceilingOption())
    .action(async (files, options) => {
      const { checkCommand } = await import("./commands/check.ts");
      await checkCommand(await terminal(), files, options);
    });
}

function addDay(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("day")
    .description("simulate one day of a plan and show how it went")
    .argument("<plan>", "plan file")
    .addOption(seedOption().default("1"))
    .addOption(whichDayOption())
    .addOption(tracesOption().default("binned"))
    .addOption(verifyOption())
    .option("--out <folder>", "write report, charts and tables to this folder (default: nothing is written)")
    .addOption(overwriteOption())
    .addOption(jsonOption("print the results as JSON on standard output"))
    .addOption(ceilingOption())
    .action(async (plan, options) => {
      const { dayCommand } = await import("./commands/day.ts");
      await dayCommand(await terminal(), plan, options);
    });
}

function addStudy(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("study")
    .description("run every variant of a study, compare them with today's plan, and write the report")
    .argument("<study>", "study file")
    .addOption(seedOption())
    .addOption(replicationsOption())
    .addOption(tracesOption().default(undefined, `"binned", "none" with more than ${MOST_TRACED} variants`))
    .addOption(verifyOption())
    .option("--out <folder>", 'folder to write (default: "runs/" and the study\'s name)')
    .addOption(overwriteOption())
    .addOption(resumeOption())
    .addOption(threadsOption())
    .addOption(queueOption().conflicts("threads"))
    .addOption(jsonOption("print the results as JSON on standard output; a folder is then written only with --out"))
    .addOption(ceilingOption())
    .action(async (study, options) => {
      const { studyCommand } = await import("./commands/study.ts");
      await studyCommand(await terminal(), study, options);
    });
}

function addWhy(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("why")
    .description("tell why a plan's work ends when it does, and what to change first")
    .argument("<plan>", "plan file")
    .addOption(seedOption().default("1"))
    .addOption(replicationsOption("days of the plan and of each change that is tried").default(20))
    .addOption(threadsOption())
    .option("--out <folder>", "write report, charts and tables to this folder (default: nothing is written)")
    .addOption(overwriteOption())
    .addOption(jsonOption("print the results as JSON on standard output"))
    .addOption(ceilingOption())
    .action(async (plan, options) => {
      const { whyCommand } = await import("./commands/why.ts");
      await whyCommand(await terminal(), plan, options);
    });
}

function addReport(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("report")
    .description("draw report and charts of a finished run anew from its data, and what other programs want of it")
    .argument("<run>", "folder of a day or study")
    .option("--png", "charts as PNG too, drawn by an installed browser")
    .option("--pdf", "the report as PDF too, printed by an installed browser")
    .option("--xlsx", "summary, inputs and the figures of every chart as a workbook for spreadsheets")
    .action(async (folder, options) => {
      const { reportCommand } = await import("./commands/report.ts");
      await reportCommand(await terminal(), folder, options);
    });
}

function addWorker(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("worker")
    .description("simulate days for studies that others hand to a queue, until Ctrl-C; runs on any number of machines")
    .addOption(queueOption().makeOptionMandatory())
    .addOption(concurrencyOption())
    .addOption(lostAfterOption())
    .addOption(ceilingOption())
    .action(async (options) => {
      const { workerCommand } = await import("./commands/worker.ts");
      await workerCommand(await terminal(), options);
    });
}

function addFit(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("fit")
    .description("turn stopwatch times into distributions: check, fit, test, and print what to put into the plan")
    .argument("<times>", 'CSV file: a column for each station, headed "STATION (UNIT)", a time in each cell')
    .addOption(unitOption())
    .addOption(byOption())
    .addOption(samplesOption())
    .addOption(seedOption().default("1"))
    .option("--out <folder>", "write pictures, results and the part of the plan to this folder (default: nothing)")
    .addOption(overwriteOption())
    .addOption(jsonOption("print all results as JSON on standard output, in place of the part of the plan"))
    .addOption(ceilingOption())
    .action(async (times, options) => {
      const { fitCommand } = await import("./commands/fit.ts");
      await fitCommand(await terminal(), times, options);
    });
}

function addCalibrate(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("calibrate")
    .description("compare a plan with days that were observed, and tell which figure would explain the gap")
    .argument("<plan>", "plan file")
    .argument("<observed>", 'CSV file: a row for each day, columns such as "06:00-07:00" (heads counted) and "finish"')
    .option("--at <stage>", "stage at whose end heads were counted (default: the last place of work)")
    .addOption(calibrationDaysOption())
    .addOption(seedOption().default("1"))
    .option("--out <folder>", "write picture and results to this folder (default: nothing)")
    .addOption(overwriteOption())
    .addOption(jsonOption("print all results as JSON on standard output"))
    .addOption(ceilingOption())
    .action(async (plan, observed, options) => {
      const { calibrateCommand } = await import("./commands/calibrate.ts");
      await calibrateCommand(await terminal(), plan, observed, options);
    });
}

function addSize(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("size")
    .description(
      "size a plant from a weekly demand: rate, positions, people, places, chiller, crates, and a first plan",
    )
    .argument("<demand>", "demand file")
    .addOption(alternativeOption())
    .addOption(seedOption().default("1"))
    .addOption(simulatedDaysOption())
    .addOption(threadsOption())
    .option("--out <file>", "write the plan to this file (default: nothing is written)")
    .option("--overwrite", "replace that file if it is there")
    .addOption(jsonOption("print design and simulated results as JSON on standard output"))
    .addOption(ceilingOption())
    .action(async (demand, options) => {
      const { sizeCommand } = await import("./commands/size.ts");
      await sizeCommand(await terminal(), demand, options);
    });
}

function addOptions(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("options")
    .description("compare what suppliers offer: net present value and payback of each option, with intervals")
    .argument("<options>", "options file: a plan, and changes of it with their prices")
    .addOption(seedOption())
    .addOption(replicationsOption())
    .addOption(threadsOption())
    .option("--out <folder>", "write report, charts and tables to this folder (default: nothing is written)")
    .addOption(overwriteOption())
    .addOption(jsonOption("print the line-up and the simulated results as JSON on standard output"))
    .addOption(ceilingOption())
    .action(async (path, options) => {
      const { optionsCommand } = await import("./commands/options.ts");
      await optionsCommand(await terminal(), path, options);
    });
}

function addImprove(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("improve")
    .description("share out places, people or a budget as well as can be: search, choice of the best, trade-off curve")
    .argument("<question>", "file that says what is to be shared out, and to what end")
    .addOption(seedOption())
    .addOption(threadsOption())
    .option("--out <folder>", "write report, charts and tables to this folder (default: nothing is written)")
    .addOption(overwriteOption())
    .addOption(resumeOption())
    .addOption(jsonOption("print what was found as JSON on standard output"))
    .addOption(ceilingOption())
    .action(async (path, options) => {
      const { improveCommand } = await import("./commands/improve.ts");
      await improveCommand(await terminal(), path, options);
    });
}

function addSchema(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("schema")
    .description("print the JSON Schema of a kind of file, for editors that complete and check it")
    .addArgument(new Argument("<kind>", "which files").choices(SCHEMA_KINDS))
    .action(async (kind) => {
      const { schemaCommand } = await import("./commands/schema.ts");
      schemaCommand(await terminal(), kind);
    });
}

function addPage(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("page")
    .description("open the live page: watch the line, change it, play the lessons; served to this machine alone")
    .argument("[plan]", "plan file to open in it (default: an example)")
    .addOption(portOption())
    .option("--no-open", "tell the address and leave the browser alone")
    .action(async (plan, options) => {
      const { pageCommand } = await import("./commands/page.ts");
      await pageCommand(await terminal(), plan, options);
    });
}

function addDemo(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("demo")
    .description("run the example studies that come with the program (an invented plant)")
    .addOption(seedOption())
    .addOption(replicationsOption())
    .addOption(tracesOption())
    .addOption(threadsOption())
    .option("--out <folder>", "folder for the runs; an earlier demo in it is replaced", "runs/demo")
    .addOption(jsonOption("print the results as a JSON list on standard output as well"))
    .action(async (options) => {
      const { demoCommand } = await import("./commands/demo.ts");
      await demoCommand(await terminal(), options);
    });
}

function addCompletion(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("completion")
    .description(
      "print the script with which a shell completes commands and options; its first lines say where it goes",
    )
    .addArgument(new Argument("<shell>", "which shell").choices(["bash", "zsh", "fish"]))
    .action(async (shell) => {
      const { completionCommand } = await import("./commands/completion.ts");
      completionCommand(await terminal(), gambrel, shell);
    });
}

function addManual(gambrel: Command, terminal: () => Promise<Terminal>): void {
  gambrel
    .command("manual")
    .description("print the whole manual")
    .option("--page", "as a page for man: gambrel manual --page > gambrel.1; man ./gambrel.1")
    .action(async (options) => {
      const { manualCommand } = await import("./commands/manual.ts");
      manualCommand(await terminal(), gambrel, options);
    });
}
