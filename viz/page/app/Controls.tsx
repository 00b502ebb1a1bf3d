import { isolated } from "../../frame/index.ts";
import type { Control } from "../plan/control.ts";
import * as state from "./state.ts";

/** Controls of the picked station, or of the group picked by name; those moved elsewhere are listed with their way back. */
export function Controls() {
  const all = state.controls.value;
  const groups = [...new Set(all.map(({ group }) => group))];
  const picked = groups.includes(state.picked.value ?? "") ? state.picked.value! : (groups[0] ?? "");
  return (
    <section class="controls" aria-label="Change the variant">
      <h2>Change the variant</h2>
      <label class="group">
        <span>Where</span>
        <select
          value={picked}
          onChange={(event) => {
            state.picked.value = event.currentTarget.value;
          }}
        >
          {groups.map((group) => (
            <option key={group} value={group}>
              {isolated(group)}
            </option>
          ))}
        </select>
      </label>
      {all
        .filter(({ group }) => group === picked)
        .map((control) => (
          <Slider key={`${control.id} ${control.group}`} control={control} />
        ))}
      <Moved shown={picked} />
      {state.variantFaults.value.length > 0 && (
        <ul class="faults">
          {state.variantFaults.value.map(({ line }) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** One control: a slider, a number to type, and the value of the plan as it is. */
export function Slider({ control, named = false }: { control: Control; named?: boolean }) {
  const value = state.moves.value[control.id] ?? control.base;
  const isMoved = value !== control.base;
  const set = (text: string) => {
    const wished = Number(text);
    if (text === "" || !Number.isFinite(wished)) return;
    state.move(control, snapped(control, wished));
  };
  const id = `control-${control.id}-${control.group}${named ? "-lesson" : ""}`;
  return (
    <div class={`control ${isMoved ? "moved" : ""}`} data-control={control.id}>
      <label for={id}>{isolated(named ? `${control.group}: ${control.label}` : control.label)}</label>
      <div class="value">
        <b>{control.words(value)}</b>
        {isMoved && (
          <button type="button" class="link" onClick={() => state.move(control, control.base)}>
            back to {control.words(control.base)}
          </button>
        )}
      </div>
      <div class="inputs">
        <button
          type="button"
          class="nudge"
          aria-label={`Less: ${control.label}`}
          disabled={value <= control.min}
          onClick={() => state.move(control, snapped(control, value - control.step))}
        >
          −
        </button>
        <input
          id={id}
          type="range"
          min={control.min}
          max={control.max}
          step={control.step}
          value={value}
          aria-valuetext={control.words(value)}
          onInput={(event) => set(event.currentTarget.value)}
        />
        <button
          type="button"
          class="nudge"
          aria-label={`More: ${control.label}`}
          disabled={value >= control.max}
          onClick={() => state.move(control, snapped(control, value + control.step))}
        >
          +
        </button>
      </div>
    </div>
  );
}

/** On the grid of the control, except for its base value, which may lie off it. */
function snapped({ base, min, max, step }: Control, wished: number): number {
  const onGrid = Math.round(wished / step) * step;
  const value = Math.abs(wished - base) < step / 2 ? base : Number(onGrid.toPrecision(10));
  return Math.min(max, Math.max(min, value));
}

function Moved({ shown }: { shown: string }) {
  const { moves } = state;
  const ids = new Set<string>();
  const others = state.controls.value.filter(({ id, group }) => {
    if (moves.value[id] === undefined || group === shown || ids.has(id)) return false;
    ids.add(id);
    return true;
  });
  return (
    <>
      {others.length > 0 && (
        <div class="elsewhere">
          <h3>Also changed</h3>
          <ul>
            {others.map((control) => (
              <li key={control.id}>
                {isolated(control.group)}, {isolated(control.label)}: {control.words(moves.value[control.id]!)}{" "}
                <button type="button" class="link" onClick={() => state.move(control, control.base)}>
                  back to {control.words(control.base)}
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
      {Object.keys(moves.value).length > 0 && (
        <button
          type="button"
          onClick={() => {
            moves.value = {};
          }}
        >
          Undo all changes
        </button>
      )}
    </>
  );
}
