import { useRef } from "preact/hooks";
import { openPlan } from "./openPlan.ts";
import * as state from "./state.ts";

/** Opens a plan file from the disk, together with the CSV files it names. */
export function OpenFile() {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        Open a file …
      </button>
      <input
        ref={input}
        type="file"
        accept=".json,application/json,.csv,text/csv"
        multiple
        hidden
        aria-label="Plan file, and the CSV files it names"
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          event.currentTarget.value = "";
          void openFiles(files);
        }}
      />
    </>
  );
}

/** Far more than any plan, far less than would stop the page. */
const MAX_BYTES = 5_000_000;

/** Opens the one plan among the files, with the CSV files beside it. What cannot be is told, and changes nothing. */
async function openFiles(files: readonly File[]): Promise<void> {
  const plans = files.filter(({ name }) => !/\.csv$/iu.test(name));
  const problem = problemOf(files, plans);
  if (problem !== null) {
    state.notice.value = problem;
    return;
  }
  const others = files.filter((file) => file !== plans[0]);
  const entries = await Promise.all(others.map(async (file) => [file.name, await file.text()] as const));
  const text = await plans[0]!.text();
  openPlan({ name: plans[0]!.name, text, files: Object.fromEntries(entries) });
  state.lesson.value = null;
  state.notice.value = `Opened ${plans[0]!.name}.`;
}

function problemOf(files: readonly File[], plans: readonly File[]): string | null {
  if (files.length === 0) return null;
  const large = files.find(({ size }) => size > MAX_BYTES);
  if (large !== undefined)
    return `${large.name} is larger than ${MAX_BYTES / 1e6} MB. A plan has a few thousand lines at most.`;
  if (plans.length === 1) return null;
  return plans.length === 0 ? "None of these files is a plan. A plan is a JSON file." : "Open one plan at a time.";
}
