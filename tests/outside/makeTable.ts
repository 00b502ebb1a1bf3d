import { writeFileSync } from "node:fs";
import { outsideTable } from "./outsideTable.ts";

writeFileSync(new URL("README.md", import.meta.url), outsideTable());
