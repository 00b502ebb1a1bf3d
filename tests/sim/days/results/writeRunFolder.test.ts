import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { mendRunFolder, writeRunFolder } from "../../../../sim/days/results/index.ts";
import { workFolders } from "../../../../sim/days/results/writeRunFolder.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

const FILES = [
  { path: "results.json", text: "{}\n" },
  { path: "charts/a.svg", text: "<svg/>" },
];

describe("writeRunFolder", () => {
  it("writes every file, making the folders above, and leaves nothing else behind", () => {
    const top = temporaryFolder();
    writeRunFolder(join(top, "runs", "one"), FILES, false);
    expect(readdirSync(join(top, "runs"))).toEqual(["one"]);
    expect(readFileSync(join(top, "runs", "one", "charts", "a.svg"), "utf8")).toBe("<svg/>");
  });

  it("writes text, text in parts and bytes", () => {
    const top = temporaryFolder();
    const parts = (function* () {
      yield "é";
      yield "b\n";
    })();
    writeRunFolder(
      join(top, "one"),
      [
        { path: "a.csv", parts },
        { path: "b.parquet", bytes: new Uint8Array([0, 255]) },
      ],
      false,
    );
    expect(readFileSync(join(top, "one", "a.csv"), "utf8")).toBe("éb\n");
    expect([...readFileSync(join(top, "one", "b.parquet"))]).toEqual([0, 255]);
  });

  it("takes away what it wrote when the parts of a file break off", () => {
    const top = temporaryFolder();
    const parts = (function* () {
      yield "half";
      throw new Error("broken");
    })();
    expect(() => writeRunFolder(join(top, "one"), [{ path: "a.csv", parts }], false)).toThrow("broken");
    expect(readdirSync(top)).toEqual([]);
  });

  it("takes an empty folder", () => {
    const top = temporaryFolder();
    mkdirSync(join(top, "one"));
    writeRunFolder(join(top, "one"), FILES, false);
    expect(readdirSync(join(top, "one")).sort()).toEqual(["charts", "results.json"]);
  });

  it("refuses a folder with a run in it and leaves that run as it was", () => {
    const top = temporaryFolder();
    writeRunFolder(join(top, "one"), FILES, false);
    expect(() => writeRunFolder(join(top, "one"), [{ path: "results.json", text: "new" }], false)).toThrow(
      /already holds a run; name another folder, or add --overwrite/,
    );
    expect(readFileSync(join(top, "one", "results.json"), "utf8")).toBe("{}\n");
  });

  it("replaces an earlier run whole when told to", () => {
    const top = temporaryFolder();
    writeRunFolder(join(top, "one"), FILES, false);
    writeRunFolder(join(top, "one"), [{ path: "results.json", text: "new" }], true);
    expect(readdirSync(join(top, "one"))).toEqual(["results.json"]);
    expect(readdirSync(top)).toEqual(["one"]);
  });

  it("never replaces a folder that holds anything else, told to or not", () => {
    const top = temporaryFolder();
    writeRunFolder(join(top, "one"), FILES, false);
    writeFileSync(join(top, "one", "my thesis.txt"), "years of work");
    expect(() => writeRunFolder(join(top, "one"), FILES, true)).toThrow(/not of a run \(my thesis\.txt\)/);
    expect(readFileSync(join(top, "one", "my thesis.txt"), "utf8")).toBe("years of work");
  });

  it("refuses a file in the place of the folder", () => {
    const top = temporaryFolder();
    writeFileSync(join(top, "one"), "");
    expect(() => writeRunFolder(join(top, "one"), FILES, true)).toThrow(/this is a file/);
  });

  it.each(["../out.txt", "/etc/x", "a/../../b", "a\\b", "", "charts/", ".hidden", "C:x"])(
    "refuses %j as a path inside the folder and writes nothing",
    (path) => {
      const top = temporaryFolder();
      expect(() => writeRunFolder(join(top, "one"), [...FILES, { path, text: "" }], false)).toThrow(/plain path/);
      expect(readdirSync(top)).toEqual([]);
    },
  );

  it("leaves the disk as it was when a file cannot be written", () => {
    const top = temporaryFolder();
    const twice = [...FILES, { path: "results.json", text: "again" }];
    expect(() => writeRunFolder(join(top, "new", "deep", "one"), twice, false)).toThrow(/EEXIST/);
    expect(readdirSync(top)).toEqual([]);
  });

  it("keeps the earlier run when the new one cannot be written", () => {
    const top = temporaryFolder();
    writeRunFolder(join(top, "one"), FILES, false);
    const twice = [...FILES, { path: "results.json", text: "again" }];
    expect(() => writeRunFolder(join(top, "one"), twice, true)).toThrow(/EEXIST/);
    expect(readFileSync(join(top, "one", "results.json"), "utf8")).toBe("{}\n");
    expect(readdirSync(top)).toEqual(["one"]);
  });

  it("replaces what a link points to and keeps the link", () => {
    const top = temporaryFolder();
    mkdirSync(join(top, "real"));
    symlinkSync(join(top, "real"), join(top, "link"));
    writeRunFolder(join(top, "link"), FILES, false);
    expect(existsSync(join(top, "real", "results.json"))).toBe(true);
    expect(readFileSync(join(top, "link", "results.json"), "utf8")).toBe("{}\n");
  });
});

function folderWith(path: string, text: string): void {
  mkdirSync(path, { recursive: true });
  writeFileSync(join(path, "results.json"), text);
}

it("gives an earlier run its name back that a kill left aside, and takes the half-made one away", () => {
  const target = join(temporaryFolder(), "run");
  const { work, aside } = workFolders(target);
  folderWith(aside, "earlier");
  folderWith(work, "half");
  mendRunFolder(target);
  expect(readFileSync(join(target, "results.json"), "utf8")).toBe("earlier");
  expect(readdirSync(join(target, ".."))).toEqual(["run"]);
});

it("keeps the new run where the kill came after it had its name", () => {
  const target = join(temporaryFolder(), "run");
  folderWith(target, "new");
  folderWith(workFolders(target).aside, "earlier");
  mendRunFolder(target);
  expect(readFileSync(join(target, "results.json"), "utf8")).toBe("new");
  expect(readdirSync(join(target, ".."))).toEqual(["run"]);
});

it("is done before a folder is written, so that no run is lost to the one after", () => {
  const target = join(temporaryFolder(), "run");
  const { work, aside } = workFolders(target);
  folderWith(aside, "earlier");
  folderWith(work, "half");
  expect(() => writeRunFolder(target, [{ path: "results.json", text: "new" }], false)).toThrow(/already holds a run/);
  expect(readFileSync(join(target, "results.json"), "utf8")).toBe("earlier");
  writeRunFolder(target, [{ path: "results.json", text: "new" }], true);
  expect(readFileSync(join(target, "results.json"), "utf8")).toBe("new");
  expect(existsSync(aside) || existsSync(work)).toBe(false);
});
