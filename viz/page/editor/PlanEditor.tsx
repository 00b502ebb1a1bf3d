import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { parseJson, planJsonSchema } from "../../../sim/asked/plan/index.ts";
import { visible } from "../../../sim/text/units/index.ts";
import { Icon } from "../app/Icon.tsx";
import { OpenFile } from "../app/OpenFile.tsx";
import { savePlan } from "../app/save.ts";
import * as state from "../app/state.ts";
import type { PlanFault } from "../worker/messages.ts";
import { PlanForm } from "./PlanForm.tsx";
import { PlanText } from "./PlanText.tsx";
import { placeOf, type TextPlace } from "./placeOf.ts";
import type { Schema } from "./schema.ts";

/** The plan as a form and as text, side by side; each follows the other, and the lines behind follow both. */
export function PlanEditor() {
  const dialog = useRef<HTMLDialogElement>(null);
  const [look, setLook] = useState<TextPlace | null>(null);
  const schema = useMemo(() => planJsonSchema() as Schema, []);
  const { text } = state.plan.value;
  const faults = state.faults.value;
  const json = useLastJson(text);
  useEffect(() => dialog.current?.showModal(), []);
  const set = (fresh: string) => {
    if (fresh !== state.plan.value.text) state.plan.value = { ...state.plan.value, text: fresh };
  };
  return (
    <dialog
      class="editor"
      ref={dialog}
      aria-label="The plan"
      onClose={() => {
        state.editorOpen.value = false;
      }}
    >
      <header>
        <h2>{state.planTitle.value}</h2>
        <OpenFile />
        <button type="button" onClick={savePlan}>
          Save the plan
        </button>
        <button type="button" class="round" aria-label="Close the plan" onClick={() => dialog.current?.close()}>
          <Icon name="close" />
        </button>
      </header>
      <div class="halves">
        <section class="half" aria-label="The plan as a form">
          {json.isCurrent ? (
            <PlanForm
              root={schema}
              faults={faults}
              value={json.value}
              change={(edit) => set(edit(state.plan.value.text))}
            />
          ) : (
            <p>The text is not valid JSON yet. The form comes back when it is.</p>
          )}
        </section>
        <section class="half" aria-label="The plan as text">
          <PlanText text={text} faults={faults} look={look} latest={() => state.plan.peek().text} change={set} />
        </section>
      </div>
      <Verdict
        faults={faults}
        warnings={state.warnings.value}
        choose={(fault) => setLook({ ...placeOf(state.plan.value.text, fault) })}
      />
    </dialog>
  );
}

function useLastJson(text: string): { value: unknown; isCurrent: boolean } {
  return useMemo(() => {
    const { value, fault } = parseJson(text);
    return { value, isCurrent: fault === null };
  }, [text]);
}

/** What the command line's check would say, line by line; a line leads to its place in the text. */
function Verdict({
  faults,
  warnings,
  choose,
}: {
  faults: readonly PlanFault[];
  warnings: readonly PlanFault[];
  choose: (fault: PlanFault) => void;
}) {
  return (
    <div class="verdicts" role="status" aria-label="What the check says">
      {faults.length === 0 ? (
        <p>
          <b>The plan is valid.</b> The page behind already shows it.
        </p>
      ) : (
        <p>
          <b>
            {faults.length} {faults.length === 1 ? "fault" : "faults"}.
          </b>{" "}
          The page behind still shows the last valid plan.
        </p>
      )}
      <ul>
        {[...faults, ...warnings].map((fault) => (
          <li key={fault.line}>
            <button type="button" class="link" onClick={() => choose(fault)}>
              {visible(fault.line)}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
