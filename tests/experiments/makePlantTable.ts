import { writeFileSync } from "node:fs";
import { plantDays, plantTable } from "./plantTable.ts";

const FILE = new URL("../../experiments/plans/README.md", import.meta.url);

writeFileSync(FILE, plantTable(await plantDays()));
