import { render } from "preact";
import { z } from "zod";
import { App } from "./app/App.tsx";
import { Desk } from "./app/desk.ts";
import { startKeys } from "./app/keys.ts";
import { openFromAddress } from "./app/start.ts";
import { startTheme } from "./app/theme.ts";
import "./page.css";
import PageWorker from "./worker/pageWorker.ts?worker&inline";
import { WorkerPool } from "./worker/workerPool.ts";

// Zod would build its checks with eval, which the page's policy forbids.
z.config({ jitless: true });

/** Two at least, so that a picture can be made while days are simulated; one core is left to the page itself. */
const HANDS = Math.min(8, Math.max(2, (navigator.hardwareConcurrency ?? 2) - 1));

startTheme(document.documentElement);
new Desk(new WorkerPool(Array.from({ length: HANDS }, () => new PageWorker()))).start();
startKeys(document);
void openFromAddress();
addEventListener("hashchange", () => void openFromAddress());
render(<App />, document.getElementById("page")!);
