import { createHash } from "node:crypto";
import type { Plugin } from "vite";
import { licencesOf } from "./licences.ts";

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
