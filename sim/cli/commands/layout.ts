import { DANGERS_IN_SHORT } from "../../../viz/report/cautions.ts";
import { runDay } from "../../day/engine/index.ts";
import { compileLine } from "../../day/line/index.ts";
import { csvText, type RunFile, stableJson } from "../../days/results/index.ts";
import { connectionSheet, equipmentList, plantLayout } from "../../questions/dossier/index.ts";
import { NoBrowser, openBrowser, sheetPrint } from "../browser.ts";
import { loadPlan, readInputFile } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { checkRunFolder, writeFolder } from "../runFolder.ts";
import { CAUTION, type Terminal } from "../terminal.ts";

export interface LayoutCommandOptions {
  seed: string;
  replications: number;
  out?: string;
  overwrite?: boolean;
  pdf?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Draws the plant of a plan at 1:100, and lists what has to be bought and connected for it, by a few simulated days. */
export async function layoutCommand(terminal: Terminal, path: string, options: LayoutCommandOptions): Promise<void> {
  const { seed, replications, out, overwrite = false, pdf = false, json } = options;
  const ceilings = ceilingsOf(options);
  const plan = loadPlan(readInputFile(path, ceilings));
  if (out !== undefined) checkRunFolder(out, overwrite);
  const { layoutVerdict } = await import("../../../viz/index.ts");
  const line = compileLine(plan);
  const days = Array.from({ length: replications }, (_, replication) =>
    runDay(line, { seed, replication, traces: "binned", mostEvents: ceilings.events }),
  );
  const layout = plantLayout(plan, days);
  const found = {
    layout,
    equipment: equipmentList(plan, layout, days),
    connections: connectionSheet(plan, layout, days),
  };
  terminal.say(layoutVerdict(found), "bold");
  for (const words of layout.findings) terminal.say(`  ${words}`);
  terminal.say("A schematic for talking, not for building.", "dim");
  terminal.say(DANGERS_IN_SHORT.join(" "), "yellow");
  terminal.say(CAUTION, "dim");
  let missing: NoBrowser | null = null;
  if (out !== undefined) {
    const { files, lacks } = await filesOf(found, pdf);
    missing = lacks;
    await writeFolder(out, files, overwrite);
  }
  terminal.say(
    out === undefined
      ? "Nothing was written. Add --out FOLDER for the drawing at 1:100, the report and the tables."
      : `Written: ${out}/layout.svg at 1:100, report.html, equipment.csv, connections.csv.`,
    "green",
  );
  if (json) terminal.data(stableJson(found));
  if (missing !== null) throw missing;
}

type Found = Parameters<typeof import("../../../viz/index.ts")["renderLayoutReport"]>[0];

/** Without a browser everything but the PDF is written. */
async function filesOf(found: Found, pdf: boolean): Promise<{ files: RunFile[]; lacks: NoBrowser | null }> {
  const { layoutSheet, renderLayoutReport, serverDocument, svgText } = await import("../../../viz/index.ts");
  const { layout, equipment, connections } = found;
  const { svg, ...paper } = layoutSheet(layout, serverDocument());
  const drawing = { svg: svgText(svg), ...paper };
  const files: RunFile[] = [
    { path: "layout.svg", text: `${drawing.svg}\n` },
    { path: "report.html", text: renderLayoutReport(found) },
    { path: "layout.json", text: stableJson(found) },
    {
      path: "equipment.csv",
      text: csvText(
        ["group", "name", "what", "number", "unit", "rateNeeded", "why", "places", "metres", "connectedTo", "standBy"],
        equipment.map((row) => [
          ...[row.group, row.name, row.what, row.number, row.unit, row.rateNeeded, row.why],
          ...[row.places, row.metres, row.connectedTo.join("; "), row.standBy],
        ]),
      ),
    },
    {
      path: "connections.csv",
      text: csvText(
        ["service", "what", "value", "unit", "formula", "source"],
        connections.parts.flatMap(({ service, rows }) =>
          rows.map(({ what, value, unit, formula, source }) => [service, what, value, unit, formula, source]),
        ),
      ),
    },
  ];
  if (!pdf) return { files, lacks: null };
  try {
    const browser = await openBrowser();
    try {
      return { files: [...files, { path: "layout.pdf", bytes: await sheetPrint(browser, drawing) }], lacks: null };
    } finally {
      await browser.close();
    }
  } catch (error) {
    if (error instanceof NoBrowser) return { files, lacks: error };
    throw error;
  }
}
