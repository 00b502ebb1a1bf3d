import { useRef } from "preact/hooks";
import { Icon } from "./Icon.tsx";
import { KEYS } from "./keys.ts";

/** What the keys do, and how to read the page. */
export function Help() {
  const dialog = useRef<HTMLDialogElement>(null);
  return (
    <>
      <button type="button" id="help" onClick={() => dialog.current?.showModal()}>
        Help
      </button>
      <dialog class="help" ref={dialog} aria-label="Help">
        <header>
          <h2>How to use the page</h2>
          <button type="button" class="round" aria-label="Close the help" onClick={() => dialog.current?.close()}>
            <Icon name="close" />
          </button>
        </header>
        <p>
          The page compares two lines: today's plan and a variant of it. Click a station or choose it by name, move a
          control, and watch what changes. Both lines get the same animals, breakdowns and luck, so every difference
          comes from your change. The pictures show one simulated day; the results are means of twenty.
        </p>
        <p>
          Your plan stays on this computer: the simulation runs inside this page and sends nothing. A link that you copy
          contains the whole plan, so whoever gets the link can read it.
        </p>
        <p>
          The page works without a mouse. Tab moves from one control to the next. On the day's time line the arrow keys
          move by a minute, page up and page down by ten minutes, home and end to the start and the end of the day.
        </p>
        <dl class="keys-list">
          {KEYS.map(({ shown, does }) => (
            <div key={shown}>
              <dt>
                <kbd>{shown}</kbd>
              </dt>
              <dd>{does}</dd>
            </div>
          ))}
        </dl>
      </dialog>
    </>
  );
}
