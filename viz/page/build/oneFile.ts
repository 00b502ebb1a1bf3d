import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Plugin } from "vite";

const LICENCE_FILE = /^(licen[cs]e|copying)(\.(md|txt))?$/iu;

/**
 * Puts script, style and the licences of everything in them into the page, with a policy that names the scripts by their
 * digests and lets nothing be asked for. `modules` collects what went into the page, its worker included.
 */
export function oneFile(modules: Set<string>): Plugin {
  return {
    name: "one-file",
    apply: "build",
    enforce: "post",
    generateBundle(_, bundle) {
      const page = Object.values(bundle).find((file) => file.fileName.endsWith(".html"));
      if (page?.type !== "asset") throw new Error("the build made no page");
      let text = String(page.source);
      const digests: string[] = [];
      for (const file of Object.values(bundle)) {
        if (file.type === "chunk") {
          // "</script" inside a string would end the script.
          const code = file.code.replaceAll("</script", "<\\/script");
          digests.push(`'sha256-${createHash("sha256").update(code).digest("base64")}'`);
          text = text.replace(tag("script", file.fileName), "");
          text = text.replace("</body>", () => `<script type="module">${code}</script>\n</body>`);
        } else if (file.fileName.endsWith(".css")) {
          text = text.replace(tag("link", file.fileName), () => `<style>${String(file.source)}</style>`);
        } else continue;
        delete bundle[file.fileName];
      }
      const licences = licencesOf(modules).replaceAll("</", "<\\/");
      text = text.replace("</body>", () => `<script type="text/plain" id="licences">${licences}</script>\n</body>`);
      const policy = policyFor(digests.join(" "));
      page.source = text.replace("<head>", `<head>\n<meta http-equiv="Content-Security-Policy" content="${policy}">`);
    },
  };
}

/** Notes the modules that a build puts together; the worker is a build of its own. */
export function noteModules(modules: Set<string>): Plugin {
  return {
    name: "note-modules",
    apply: "build",
    generateBundle(_, bundle) {
      for (const file of Object.values(bundle)) {
        if (file.type === "chunk") for (const id of Object.keys(file.modules)) modules.add(id);
      }
    },
  };
}

function tag(name: "script" | "link", file: string): RegExp {
  const escaped = file.replace(/[.*+?^${}()|[\]\\]/gu, "\\$&");
  return new RegExp(`<${name}[^>]*${escaped}"[^>]*>${name === "script" ? "</script>" : ""}`, "u");
}

/** The editor sets styles by script; the worker starts from a blob because the page may have no server. */
function policyFor(scripts: string): string {
  return [
    "default-src 'none'",
    `script-src ${scripts} blob:`,
    "worker-src blob:",
    "style-src 'unsafe-inline'",
    "img-src data: blob:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

/**
 * The licence of every package that the modules come from, with its text, in alphabetical order: what has to go along
 * with the page. `modules`: paths as the bundler gives them. Throws for a package that tells no licence.
 */
export function licencesOf(modules: Iterable<string>): string {
  const folders = new Set([...modules].flatMap((id) => packageFolder(id.split("?")[0]!) ?? []));
  const parts = [...folders].map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
    const file = readdirSync(folder).find((each) => LICENCE_FILE.test(each));
    if (typeof license !== "string" && file === undefined) throw new Error(`${name}: no licence is told`);
    const text = file === undefined ? "" : readFileSync(join(folder, file), "utf8").trim();
    return { name: String(name), text: `${name} ${version}: ${license ?? "see below"}\n\n${text}` };
  });
  parts.sort((a, b) => (a.name < b.name ? -1 : 1));
  return parts.map(({ text }) => text).join("\n\n----\n\n");
}

/** The folder of the package that a module belongs to; null for the program's own modules. */
function packageFolder(path: string): string | null {
  if (!path.includes("/node_modules/")) return null;
  for (let folder = dirname(path); !folder.endsWith("/node_modules"); folder = dirname(folder)) {
    const manifest = join(folder, "package.json");
    // Packages put small manifests into folders of theirs, without a name.
    if (existsSync(manifest) && JSON.parse(readFileSync(manifest, "utf8")).name !== undefined) return folder;
    if (folder === dirname(folder)) return null;
  }
  return null;
}
