import { render } from "preact";
import { z } from "zod";
import { App } from "./app/App.tsx";
import { startKeys } from "./app/keys.ts";
import { openFromAddress } from "./app/openFromAddress.ts";
import { QuestionRunner } from "./app/questionRunner.ts";
import { startTheme } from "./app/theme.ts";
import "./page.css";
import PageWorker from "./worker/pageWorker.ts?worker&inline";
import { WorkerPool } from "./worker/workerPool.ts";

// Zod would build its checks with eval, which the page's policy forbids.
z.config({ jitless: true });

const CORES = navigator.hardwareConcurrency ?? 2;
/** On two cores both simulate days; of more, one is left to the page and its pictures. */
const WORKERS = Math.min(8, Math.max(2, CORES - 1));
const workers = (count: number) => new WorkerPool(Array.from({ length: count }, () => new PageWorker()));

startTheme(document.documentElement);
new QuestionRunner({ days: workers(WORKERS), pictures: workers(1), isRoomForBoth: WORKERS < CORES }).start();
startKeys(document);
void openFromAddress();
addEventListener("hashchange", () => void openFromAddress());
render(<App />, document.getElementById("page")!);
