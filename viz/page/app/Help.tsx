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
          Two lines run side by side: the plan as it is, and a variant of it. Pick a station on the rail or by name,
          move a control, and the variant follows. Both days are drawn from the same random numbers, so a difference
          comes from the change and not from luck. One day is one draw; the figures with intervals are means of twenty.
        </p>
        <p>
          Nothing leaves this page: the simulation runs here, a plan you open stays here, and a link carries its plan in
          itself.
        </p>
        <p>
          Tab leads through everything. On the strip of the day the arrow keys move by a minute, page up and page down
          by ten minutes, home and end to its ends.
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
