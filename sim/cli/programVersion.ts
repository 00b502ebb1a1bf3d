import { readFileSync } from "node:fs";
import { join } from "node:path";
import { projectRoot } from "./projectRoot.ts";

/** The version in package.json. */
export function programVersion(): string {
  const { version } = JSON.parse(readFileSync(join(projectRoot(), "package.json"), "utf8"));
  return String(version);
}
