import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";

const HERE = dirname(fileURLToPath(import.meta.url));
const ROOT = resolve(HERE, "../..");
const { version } = JSON.parse(readFileSync(resolve(ROOT, "package.json"), "utf8"));

/**
 * The live page as one file that opens from a disk, a mail or any host: script and style stand in it, the worker is part
 * of the script. Its policy lets nothing else run and nothing be asked for.
 */
export default defineConfig({
  root: HERE,
  base: "./",
  define: { __VERSION__: JSON.stringify(version) },
  worker: { format: "iife" },
  build: {
    outDir: resolve(ROOT, "dist/page"),
    emptyOutDir: true,
    assetsInlineLimit: Number.MAX_SAFE_INTEGER,
    cssCodeSplit: false,
    modulePreload: false,
    chunkSizeWarningLimit: 4000,
    license: { fileName: "licences.md" },
    rolldownOptions: { output: { codeSplitting: false } },
  },
  plugins: [oneFile()],
});

/** Puts script and style into the page, with a policy that names them by their digests. */
function oneFile(): Plugin {
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
          text = text.replace(scriptTag(file.fileName), "");
          text = text.replace("</body>", () => `<script type="module">${code}</script>\n</body>`);
        } else if (file.fileName.endsWith(".css")) {
          text = text.replace(styleTag(file.fileName), () => `<style>${String(file.source)}</style>`);
        } else continue;
        delete bundle[file.fileName];
      }
      const policy = policyFor(digests.join(" "));
      page.source = text.replace("<head>", `<head>\n<meta http-equiv="Content-Security-Policy" content="${policy}">`);
    },
  };
}

function scriptTag(name: string): RegExp {
  return new RegExp(`<script[^>]*${escaped(name)}"[^>]*></script>`, "u");
}

function styleTag(name: string): RegExp {
  return new RegExp(`<link[^>]*${escaped(name)}"[^>]*>`, "u");
}

function escaped(name: string): string {
  return name.replace(/[.*+?^${}()|[\]\\]/gu, "\\$&");
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
