/**
 * Arguments of the runtime for threads of this process: its own, and where the project runs from its TypeScript sources
 * also one that makes each thread read them. (A transpiler that this process was started with reaches its threads in
 * every release of the runtime only as far as the older module format goes, in which calls from module to module take
 * twice the time.)
 */
export function threadArguments(): string[] {
  return import.meta.url.endsWith(".ts") ? [...process.execArgv, "--import", readsTypeScript()] : process.execArgv;
}

function readsTypeScript(): string {
  const program = `import { register } from ${JSON.stringify(import.meta.resolve("tsx/esm/api"))}; register();`;
  return `data:text/javascript,${encodeURIComponent(program)}`;
}
