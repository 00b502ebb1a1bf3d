import { CAUTIONS } from "../../report/cautions.ts";
import { Controls } from "./Controls.tsx";
import { DayStrip } from "./DayStrip.tsx";
import { Difference } from "./Difference.tsx";
import { Legend } from "./Legend.tsx";
import { RailView } from "./RailView.tsx";
import { Results } from "./Results.tsx";
import * as state from "./state.ts";
import { Transport } from "./Transport.tsx";

/** The page: the day's clock on top, both lines below it, what can be changed and what comes of it beside them. */
export function App() {
  return (
    <>
      <main>
        <div class="stage">
          <div class="deck">
            <Transport />
            <DayStrip />
          </div>
          <Lines />
          <Legend />
        </div>
        <aside>
          <Controls />
          <Results />
        </aside>
      </main>
      <footer class="cautions">
        {CAUTIONS.map((caution) => (
          <p key={caution}>{caution}</p>
        ))}
        <p>Gambrel {__VERSION__}</p>
      </footer>
      <p class="notice" role="status" aria-live="polite">
        {state.notice.value}
      </p>
    </>
  );
}

function Lines() {
  if (state.tooLong.value) {
    return (
      <p class="empty">This plan's day has too many heads to be drawn. Its figures are worked out all the same.</p>
    );
  }
  return (
    <div class="lines">
      <section class="line" aria-label="The plan as it is">
        <h2>The plan as it is</h2>
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
  const ids = new Set<string>();
  const moved = state.controls.value.filter(({ id }) => {
    if (state.moves.value[id] === undefined || ids.has(id)) return false;
    ids.add(id);
    return true;
  });
  if (moved.length === 0) return <span class="small">the same until a control is moved</span>;
  const words = moved.map(({ id, group, label, words }) => `${group}: ${label} ${words(state.moves.value[id]!)}`);
  return <span class="small">{words.join("; ")}</span>;
}
