import { mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { join, resolve } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { builtPage, openedPlan, pageWithPlan, servePage } from "../../../../sim/cli/commands/page.ts";
import { readInputFile } from "../../../../sim/cli/inputs.ts";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { pagePath } from "../../../support/openPage.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";
import { startCli } from "../../../support/startCli.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

it("serves the page with the plan in it until Ctrl-C, and ends well", async () => {
  const page = startCli(cliFolder(), ["page", "plan.json", "--no-open"]);
  await page.until(/http:\/\/127\.0\.0\.1:\d+\/, for this machine alone/);
  // At once: whoever reads that Ctrl-C ends it may press it.
  page.child.kill("SIGINT");
  const { code, err } = await page.ended();
  expect(code).toBe(0);
  expect(err).toContain("Animal welfare");
  expect(err).not.toContain("Error");
}, 90_000);

it("refuses a plan that is not sound, fault by fault, before anything is served", async () => {
  const run = await callCli(cliFolder({ "bad.json": { name: "x" } }), ["page", "bad.json", "--no-open"]);
  expect(run.code).toBe(2);
  expect(run.err).toContain("bad.json: line:");
  expect(run.err).not.toContain("http://");
  const port = await callCli(cliFolder(), ["page", "--port", "70000"]);
  expect([port.code, port.err.includes("from 1 to 65535")]).toEqual([2, true]);
}, 60_000);

it("makes one file with script, style, worker and licences in it, that may ask for nothing", async () => {
  const path = await pagePath();
  expect(readdirSync(resolve(path, ".."))).toEqual(["index.html"]);
  const page = readFileSync(path, "utf8");
  // Told as true or false: a page of a megabyte is no message.
  const has = (part: RegExp): boolean => part.test(page);
  expect(
    has(/http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'sha256-[\w+/=]+' blob:;/u),
  ).toBe(true);
  expect(has(/<(script|link|img)[^>]+(src|href)="(?!data:)/u)).toBe(false);
  expect(has(/node:(fs|path|process)/u)).toBe(false);
  const licences = page.slice(page.indexOf('id="licences">'));
  for (const name of ["zod", "preact", "seedrandom", "jstat", "codemirror", "d3-scale"]) {
    expect(new RegExp(`^${name} \\d`, "mu").test(licences), name).toBe(true);
  }
}, 120_000);

it("takes a built page as it is unless a source is newer, and says when it builds", async () => {
  const root = temporaryFolder();
  const said: string[] = [];
  const page = join(root, "dist", "page", "index.html");
  await expect(builtPage(root, () => {})).rejects.toThrow("is the installation complete?");
  mkdirSync(join(root, "dist", "page"), { recursive: true });
  writeFileSync(page, "built");
  // An installed package has no sources.
  expect(await builtPage(root, (line) => said.push(line))).toBe(page);
  mkdirSync(join(root, "viz", "build"), { recursive: true });
  const config = join(root, "viz", "build", "page.config.ts");
  writeFileSync(config, "export default { no config");
  utimesSync(config, new Date(0), new Date(0));
  for (const folder of ["viz", "viz/build"]) utimesSync(join(root, folder), new Date(0), new Date(0));
  expect(await builtPage(root, (line) => said.push(line))).toBe(page);
  expect(said).toEqual([]);
  utimesSync(config, new Date(), new Date(Date.now() + 1000));
  await expect(builtPage(root, (line) => said.push(line))).rejects.toThrow();
  expect(said).toEqual(["Building the page from its sources: this takes some seconds, once."]);
  expect(readFileSync(page, "utf8")).toBe("built");
  expect(readdirSync(join(root, "dist"))).toEqual(["page"]);
}, 120_000);

async function served(): Promise<URL> {
  const server = await servePage(() => "<p>the page</p>", 0);
  onTestFinished(() => server.close());
  return new URL(server.address);
}

interface Reply {
  status: number | undefined;
  headers: NodeJS.Dict<string | string[]>;
  text: string;
}

/** As a browser or anything else may ask: fetch would not let the host be set. */
function ask(url: URL, path: string, { method = "GET", ...headers }: Record<string, string> = {}): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: url.hostname, port: url.port, path, method, headers }, (response) => {
      let text = "";
      response.setEncoding("utf8").on("data", (part: string) => {
        text += part;
      });
      response.on("end", () => resolve({ status: response.statusCode, headers: response.headers, text }));
    });
    sent.on("error", reject).end();
  });
}

it("listens on this machine's own address and gives the page with headers that keep others out", async () => {
  const url = await served();
  expect(url.hostname).toBe("127.0.0.1");
  const { status, headers, text } = await ask(url, "/");
  expect([status, text]).toEqual([200, "<p>the page</p>"]);
  expect(headers).toMatchObject({
    "content-security-policy": "frame-ancestors 'none'",
    "cross-origin-resource-policy": "same-origin",
    "x-content-type-options": "nosniff",
    "cache-control": "no-store",
  });
  expect((await ask(url, "/?again")).status).toBe(200);
  expect((await ask(url, "/", { host: `localhost:${url.port}` })).status).toBe(200);
  expect(await ask(url, "/", { method: "HEAD" })).toMatchObject({ status: 200, text: "" });
});

it.each([
  ["another host's name", "/", { host: "evil.example" }, 403],
  ["another port in the name", "/", { host: "127.0.0.1:1" }, 403],
  ["another site's script", "/", { origin: "http://evil.example" }, 403],
  ["a page without an origin of its own", "/", { origin: "null" }, 403],
  ["writing", "/", { method: "POST" }, 405],
  ["any other file", "/package.json", {}, 404],
  ["a way up", "/../package.json", {}, 404],
  ["a way up in disguise", "/%2e%2e/package.json", {}, 404],
  ["an address without a path", "//package.json", {}, 404],
])("refuses %s and does not give the page", async (_, path, headers, status) => {
  const reply = await ask(await served(), path, headers);
  expect(reply.status).toBe(status);
  expect(reply.text).not.toContain("the page</p>");
});

it("takes the files along that a plan reads, by the names it reads them with", () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "times.csv"), "seconds\n8.1\n7.9\n");
  const line = SMALL_PLAN.line.map((stage) =>
    stage.name === "stunning"
      ? { ...stage, cycle: { empirical: { csv: "times.csv", column: "seconds", unit: "s" } } }
      : stage,
  );
  writeFileSync(join(folder, "plan.json"), JSON.stringify({ ...SMALL_PLAN, line }));
  const opened = openedPlan(readInputFile(join(folder, "plan.json")));
  expect(opened.name).toBe("plan.json");
  expect(opened.files).toEqual({ "times.csv": "seconds\n8.1\n7.9\n" });
});

it("puts a plan into the page as data that cannot end its block, whatever it says", () => {
  const plan = { name: "a.json", text: '</script><script>alert("$&")</script>', files: {} };
  const page = pageWithPlan("<body>page</body>", plan);
  expect(page.match(/<script/gu)).toHaveLength(1);
  const data = /<script type="application\/json" id="opened-plan">(.*)<\/script>/su.exec(page)![1]!;
  expect(JSON.parse(data)).toEqual(plan);
  expect(pageWithPlan("<body>page</body>", null)).toBe("<body>page</body>");
});
