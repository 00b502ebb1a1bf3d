import { useRef } from "preact/hooks";
import { openFiles } from "./openFiles.ts";

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
