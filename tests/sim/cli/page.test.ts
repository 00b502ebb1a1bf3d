import { expect, it } from "vitest";
import { cliFolder } from "../../support/cliFolder.ts";
import { runCli } from "../../support/runCli.ts";
import { startCli } from "../../support/startCli.ts";

it("serves the page with the plan in it until Ctrl-C, and ends well", async () => {
  const page = startCli(cliFolder(), ["page", "plan.json", "--no-open"]);
  await page.until(/http:\/\/127\.0\.0\.1:\d+\/ for this machine alone/);
  // At once: whoever reads that Ctrl-C ends it may press it.
  page.child.kill("SIGINT");
  const { code, err } = await page.ended();
  expect(code).toBe(0);
  expect(err).toContain("Animal welfare");
  expect(err).not.toContain("Error");
}, 90_000);

it("refuses a plan that is not sound, fault by fault, before anything is served", async () => {
  const run = await runCli(cliFolder({ "bad.json": { name: "x" } }), ["page", "bad.json", "--no-open"]);
  expect(run.code).toBe(2);
  expect(run.err).toContain("bad.json: line:");
  expect(run.err).not.toContain("http://");
  const port = await runCli(cliFolder(), ["page", "--port", "70000"]);
  expect([port.code, port.err.includes("from 1 to 65535")]).toEqual([2, true]);
}, 60_000);
