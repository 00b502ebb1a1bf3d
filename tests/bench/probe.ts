import process from "node:process";
import { measured, type Task } from "./tasks.ts";

// One measurement in a process of its own, so that neither compiled code nor memory of another one gets into it.
process.stdout.write(JSON.stringify(measured(JSON.parse(process.argv[2]!) as Task)));
