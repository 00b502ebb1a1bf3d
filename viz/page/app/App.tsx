import { useEffect } from "preact/hooks";
import { formatDecimals } from "../../../sim/text/units/index.ts";
import { isolated } from "../../frame/index.ts";
import { CAUTIONS, DANGERS, DANGERS_IN_SHORT } from "../../report/cautions.ts";
import { PlanEditor } from "../editor/PlanEditor.tsx";
import { runningDifference, runningDifferenceWords } from "../scene/runningDifference.ts";
import { Controls } from "./Controls.tsx";
import { DayStrip } from "./DayStrip.tsx";
import { Head } from "./Head.tsx";
import { useSlowSeconds } from "./hooks.ts";
import { Legend } from "./Legend.tsx";
import { LessonPanel } from "./LessonPanel.tsx";
import { RailView } from "./RailView.tsx";
import { Results } from "./Results.tsx";
import { Strips } from "./Strips.tsx";
import * as state from "./state.ts";
import { Transport } from "./Transport.tsx";

/** The page: the day's clock on top, both lines below it, what can be changed and what comes of it beside them. */
export function App() {
  return (
    <>
      <Head />
      <Dangers />
      <main>
        <div class="stage">
          <div class="deck">
            <Transport />
            <DayStrip />
          </div>
          <Unsound />
          <Lines />
          <Legend />
          <Strips />
        </div>
        <aside>
          {state.lesson.value !== null && <LessonPanel key={state.lesson.value.id} lesson={state.lesson.value} />}
          <Controls />
          <Results />
        </aside>
      </main>
      <footer class="cautions">
        {CAUTIONS.map((caution) => (
          <p key={caution}>{caution}</p>
        ))}
        <p>Gambrel {__VERSION__}</p>
        <Licences />
      </footer>
      {state.editorOpen.value && <PlanEditor />}
      <Notice />
    </>
  );
}

/** What hurts on such a line, before anything of it is drawn: in short, and each danger on request (the last one says who decides). */
function Dangers() {
  const [what, who] = DANGERS_IN_SHORT;
  return (
    <section class="dangers" aria-label="Cautions">
      <p>
        <b>{what}</b> {who}
      </p>
      <details>
        <summary>What to do about each</summary>
        <ul>
          {DANGERS.slice(0, -1).map((danger) => (
            <li key={danger}>{danger}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}

/** Long enough to be read, which takes longer words longer; then it makes way again. */
const NOTICE_MILLISECONDS = 2000;

const MILLISECONDS_A_LETTER = 60;

function Notice() {
  const words = state.notice.value;
  useEffect(() => {
    if (words === "") return;
    const timer = setTimeout(
      () => {
        state.notice.value = "";
      },
      NOTICE_MILLISECONDS + MILLISECONDS_A_LETTER * words.length,
    );
    return () => clearTimeout(timer);
  }, [words]);
  return (
    <p class="notice" role="status" aria-live="polite">
      {words}
    </p>
  );
}

/** What the page is built from, with the notices that have to go along; put in when it is built. */
function Licences() {
  const text = document.getElementById("licences")?.textContent ?? "";
  return (
    <details class="licences">
      <summary>Licences of the libraries in this page</summary>
      <pre>{text.replaceAll("<\\/", "</")}</pre>
    </details>
  );
}

/** With faults in the plan the page shows another one than the plan that is open: that has to be said. */
function Unsound() {
  const count = state.faults.value.length;
  if (count === 0) return null;
  const shown =
    state.soundPlan.value === null
      ? `Nothing can be drawn until ${count === 1 ? "it is" : "they are"} fixed.`
      : "The page still shows the last valid plan.";
  return (
    <p class="unsound" role="status">
      <b>
        {count} {count === 1 ? "fault" : "faults"} in this plan.
      </b>{" "}
      {shown} “Edit the plan” shows what to fix.
    </p>
  );
}

function Lines() {
  if (state.tooLong.value) {
    return <p class="empty">This day has too many heads to draw. The results are calculated all the same.</p>;
  }
  return (
    <div class="lines">
      <section class="line" aria-label="Today's plan">
        <h2>Today's plan</h2>
        <RailView which="base" />
      </section>
      <Difference />
      <section class="line" aria-label="The variant">
        <h2>
          The variant <ChangeWords />
        </h2>
        <RailView which="variant" />
      </section>
    </div>
  );
}

function ChangeWords() {
  const words = state.changeWords.value;
  return <span class="small">{words === "" ? "same as today's plan until you move a control" : isolated(words)}</span>;
}

/** How far the variant is ahead by now; once both have done all work, how the day came out. */
function Difference() {
  const seconds = useSlowSeconds();
  const base = state.courses.base.value;
  const variant = state.courses.variant.value;
  if (base === null || variant === null) return null;
  const found = runningDifference(base, variant, seconds);
  const counts = `${formatDecimals(found.base, 0)} in today's plan, ${formatDecimals(found.variant, 0)} in the variant`;
  return (
    <p class="difference">
      <strong>
        {state.isChanged.value ? runningDifferenceWords(found) : "Nothing is changed yet: move a control to compare."}
      </strong>
      <span>
        Heads done by now: {counts}. This is one simulated day; “Results” has the means of {state.REPLICATIONS}.
      </span>
    </p>
  );
}
