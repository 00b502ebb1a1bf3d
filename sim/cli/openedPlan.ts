import { basename } from "node:path";
import { readPlan, type TextFiles } from "../asked/plan/index.ts";
import type { InputFile } from "./inputFile.ts";

/** A plan as the page opens it: its name, its text, and the CSV files it names, by the paths it names them with. */
export interface OpenedPlan {
  name: string;
  text: string;
  files: Record<string, string>;
}

/** A plan file with all the files it reads; the page has no disk to read them from. */
export function openedPlan({ path, text, json, files }: InputFile): OpenedPlan {
  const read: Record<string, string> = {};
  const noting: TextFiles = {
    readText(name) {
      read[name] = files.readText(name);
      return read[name];
    },
  };
  readPlan(json, noting);
  return { name: basename(path), text, files: read };
}

/** The page with a plan in it, as a block of data that no browser runs, whatever the plan says. */
export function pageWithPlan(page: string, plan: OpenedPlan | null): string {
  if (plan === null) return page;
  const data = JSON.stringify(plan).replace(/</gu, "\\u003c");
  return page.replace("</body>", () => `<script type="application/json" id="opened-plan">${data}</script>\n</body>`);
}
