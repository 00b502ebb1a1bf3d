import { applyEdits, type JSONPath, modify } from "jsonc-parser";
import { createContext } from "preact";
import { useContext, useState } from "preact/hooks";
import { formatPath } from "../../../sim/asked/plan/index.ts";
import { isolated } from "../../frame/index.ts";
import type { PlanFault } from "../worker/messages.ts";
import { fieldKind, firstValue, resolved, type Schema, shapeName, shapeOf } from "./schema.ts";

/** What every field needs: the schema as a whole, the faults, and how the text is changed. */
interface FormContext {
  root: Schema;
  faults: readonly PlanFault[];
  change: (edit: (text: string) => string) => void;
}
const Form = createContext<FormContext | null>(null);

interface FieldProps {
  schema: Schema;
  value: unknown;
  path: JSONPath;
  label: string;
}

/** The plan as a form, made from its published schema: every key with its meaning, every fault at its field. */
export function PlanForm({ value, ...context }: FormContext & { value: unknown }) {
  return (
    <Form.Provider value={context}>
      <div class="form">
        <Keys schema={context.root} value={value} path={[]} />
      </div>
    </Form.Provider>
  );
}

function useForm(): FormContext {
  return useContext(Form)!;
}

function Field({ schema: raw, value, path, label }: FieldProps) {
  const { root } = useForm();
  const schema = resolved(raw, root);
  const field = fieldKind(schema);
  switch (field.kind) {
    case "list":
      return <List schema={schema} items={field.items} value={value} path={path} label={label} />;
    case "object":
    case "one of":
    case "table":
      return (
        <Group path={path} label={label} about={schema.description}>
          <Inside schema={schema} value={value} path={path} label={label} />
        </Group>
      );
    case "shapes":
      return <Shapes schema={schema} shapes={field.shapes} value={value} path={path} label={label} />;
    default:
      return <Scalar schema={schema} value={value} path={path} label={label} />;
  }
}

/** What stands inside a group, without the group itself. */
function Inside({ schema: raw, value, path, label }: FieldProps) {
  const { root } = useForm();
  const schema = resolved(raw, root);
  const field = fieldKind(schema);
  if (field.kind === "object") return <Keys schema={schema} value={value} path={path} />;
  if (field.kind === "one of") return <OneOf schema={schema} value={value} path={path} />;
  if (field.kind === "table") return <Table values={field.values} value={value} path={path} />;
  return <Field schema={schema} value={value} path={path} label={label} />;
}

/** A part that can be folded away; what is inside is made when it is opened. */
function Group({
  path,
  label,
  about,
  children,
}: {
  path: JSONPath;
  label: string;
  about?: string | undefined;
  children: preact.ComponentChildren;
}) {
  const { faults } = useForm();
  const [isOpen, setOpen] = useState(path.length < 1);
  const here = formatPath(path);
  const inside = faults.filter(({ path: at }) => at === here || at.startsWith(`${here}.`) || at.startsWith(`${here}[`));
  return (
    <details class="group-field" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {isolated(label)} {inside.length > 0 && <b class="flag">{inside.length} to fix</b>}
      </summary>
      {about && <p class="small">{about}</p>}
      <Faults path={path} />
      {isOpen && children}
    </details>
  );
}

function Keys({ schema, value, path }: { schema: Schema; value: unknown; path: JSONPath }) {
  const { change, root } = useForm();
  const record = asRecord(value);
  const properties = Object.entries(schema.properties ?? {}).filter(([key]) => key !== "$schema");
  const isThere = ([key]: [string, Schema]) => Object.hasOwn(record, key);
  const required = new Set(schema.required);
  const shown = properties.filter((entry) => isThere(entry) || required.has(entry[0]));
  const absent = properties.filter((entry) => !shown.includes(entry));
  return (
    <div class="keys">
      {shown.map(([key, inner]) => (
        <div key={key} class="key">
          <Field schema={inner} value={record[key]} path={[...path, key]} label={key} />
          {!required.has(key) && <Remove path={[...path, key]} label={key} />}
        </div>
      ))}
      {absent.length > 0 && (
        <select
          class="add"
          aria-label={`Add to ${formatPath(path) || "the plan"}`}
          value=""
          onChange={(event) => {
            const key = event.currentTarget.value;
            event.currentTarget.value = "";
            if (key !== "")
              change((text) => setInText(text, [...path, key], firstValue(schema.properties![key]!, root)));
          }}
        >
          <option value="">Add …</option>
          {absent.map(([key]) => (
            <option key={key} value={key}>
              {key}
            </option>
          ))}
        </select>
      )}
    </div>
  );
}

/** One of several keys, such as a distribution by its family. */
function OneOf({ schema, value, path }: { schema: Schema; value: unknown; path: JSONPath }) {
  const { change, root } = useForm();
  const keys = Object.keys(schema.properties ?? {});
  const record = asRecord(value);
  const chosen = keys.find((key) => Object.hasOwn(record, key)) ?? "";
  return (
    <div class="keys">
      <select
        aria-label={`Which: ${formatPath(path)}`}
        value={chosen}
        onChange={(event) => {
          const key = event.currentTarget.value;
          change((text) =>
            setInText(text, path, { [key]: keepShared(record[chosen], firstValue(schema.properties![key]!, root)) }),
          );
        }}
      >
        {chosen === "" && <option value="">choose …</option>}
        {keys.map((key) => (
          <option key={key} value={key}>
            {key}
          </option>
        ))}
      </select>
      {chosen !== "" && (
        <Inside schema={schema.properties![chosen]!} value={record[chosen]} path={[...path, chosen]} label={chosen} />
      )}
    </div>
  );
}

/** Parts that the old and the new choice both have (a mean, say) keep their values. */
function keepShared(before: unknown, fresh: unknown): unknown {
  const [old, made] = [asRecord(before), asRecord(fresh)];
  if (Object.keys(made).length === 0) return fresh;
  return Object.fromEntries(
    Object.entries(made).map(([key, value]) => [key, Object.hasOwn(old, key) ? old[key] : value]),
  );
}

function Shapes({ schema, shapes, value, path, label }: FieldProps & { shapes: readonly Schema[] }) {
  const { change, root } = useForm();
  const index = shapeOf(value, shapes, root);
  const names = shapes.map((shape) => shapeName(shape, root));
  const chosen = shapes[index]!;
  return (
    <div class="shapes">
      <select
        aria-label={`Kind of ${label}`}
        value={index}
        onChange={(event) => {
          const wished = shapes[Number(event.currentTarget.value)]!;
          change((text) => setInText(text, path, keepShared(value, firstValue(wished, root))));
        }}
      >
        {names.map((name, at) => (
          <option key={name} value={at}>
            {name}
          </option>
        ))}
      </select>
      <Field schema={{ description: schema.description ?? "", ...chosen }} value={value} path={path} label={label} />
    </div>
  );
}

function List({ schema, items, value, path, label }: FieldProps & { items: Schema }) {
  const { change, root } = useForm();
  const list = Array.isArray(value) ? value : [];
  return (
    <Group path={path} label={`${label} (${list.length})`} about={schema.description}>
      <div class="keys">
        {list.map((element, index) => (
          <div key={index} class="key">
            <Field
              schema={items}
              value={element}
              path={[...path, index]}
              label={nameOf(element, `${label} ${index + 1}`)}
            />
            <div class="tools">
              <Move path={path} list={list} index={index} by={-1} />
              <Move path={path} list={list} index={index} by={1} />
              <Remove path={[...path, index]} label={nameOf(element, `${label} ${index + 1}`)} />
            </div>
          </div>
        ))}
        <button
          type="button"
          onClick={() =>
            change((text) => insertInText(text, path, list.length, list.at(-1) ?? firstValue(items, root)))
          }
        >
          {list.length === 0 ? `Add to ${label}` : "Add a copy of the last"}
        </button>
      </div>
    </Group>
  );
}

function nameOf(element: unknown, otherwise: string): string {
  if (typeof element === "string") return otherwise;
  const { name, as, to, path } = asRecord(element);
  const found = [name, as, to, path].find((each) => typeof each === "string" && each !== "");
  return typeof found === "string" ? found : otherwise;
}

function Move({ path, list, index, by }: { path: JSONPath; list: unknown[]; index: number; by: 1 | -1 }) {
  const { change } = useForm();
  const to = index + by;
  return (
    <button
      type="button"
      class="nudge"
      aria-label={`${by < 0 ? "Up" : "Down"}: ${nameOf(list[index], String(index + 1))}`}
      disabled={to < 0 || to >= list.length}
      onClick={() =>
        change((text) => insertInText(setInText(text, [...path, index], undefined), path, to, list[index]))
      }
    >
      {by < 0 ? "↑" : "↓"}
    </button>
  );
}

function Remove({ path, label }: { path: JSONPath; label: string }) {
  const { change } = useForm();
  return (
    <button
      type="button"
      class="nudge"
      aria-label={`Take out: ${label}`}
      onClick={() => change((text) => setInText(text, path, undefined))}
    >
      ×
    </button>
  );
}

/** Names chosen freely with a value each: people by shift, prices by product. */
function Table({ values, value, path }: { values: Schema; value: unknown; path: JSONPath }) {
  const { change, root } = useForm();
  const [name, setName] = useState("");
  const record = asRecord(value);
  return (
    <div class="keys">
      {Object.entries(record).map(([key, inner]) => (
        <div key={key} class="key">
          <Field schema={values} value={inner} path={[...path, key]} label={key} />
          <Remove path={[...path, key]} label={key} />
        </div>
      ))}
      <div class="pair-input">
        <input
          type="text"
          aria-label={`New name in ${formatPath(path)}`}
          placeholder="name"
          value={name}
          onInput={(event) => setName(event.currentTarget.value)}
        />
        <button
          type="button"
          disabled={name === "" || Object.hasOwn(record, name)}
          onClick={() => {
            change((text) => setInText(text, [...path, name], firstValue(values, root)));
            setName("");
          }}
        >
          Add
        </button>
      </div>
    </div>
  );
}

function Scalar({ schema, value, path, label }: FieldProps) {
  const { change } = useForm();
  const id = `field-${formatPath(path)}`;
  const field = fieldKind(schema);
  const set = (fresh: unknown) => change((text) => setInText(text, path, fresh));
  const about = `${id}-about`;
  const common = { id, "aria-describedby": about };
  return (
    <div class="scalar">
      <label for={id}>{isolated(label)}</label>
      {field.kind === "yes or no" ? (
        <input
          {...common}
          type="checkbox"
          checked={value === true}
          onChange={(event) => set(event.currentTarget.checked)}
        />
      ) : field.kind === "choice" ? (
        <select
          {...common}
          value={String(value)}
          onChange={(event) => set(field.values.find((each) => String(each) === event.currentTarget.value))}
        >
          {!field.values.includes(value) && (
            <option value={String(value)}>{value === undefined ? "choose …" : String(value)}</option>
          )}
          {field.values.map((each) => (
            <option key={String(each)} value={String(each)}>
              {String(each)}
            </option>
          ))}
        </select>
      ) : (
        <input
          {...common}
          type="text"
          value={textOf(value)}
          placeholder={schema.examples === undefined ? "" : String(schema.examples[0])}
          onChange={(event) => set(valueFromText(event.currentTarget.value, field.kind, value))}
        />
      )}
      <p class="small" id={about}>
        {schema.description}
      </p>
      <Faults path={path} />
    </div>
  );
}

function textOf(value: unknown): string {
  if (value === undefined) return "";
  return typeof value === "string" ? value : JSON.stringify(value);
}

/** A number where a number is due or was; any other text as it was typed, for the plan's own check to judge. */
function valueFromText(text: string, kind: string, before: unknown): unknown {
  const trimmed = text.trim();
  if ((kind === "number" || typeof before === "number") && trimmed !== "" && Number.isFinite(Number(trimmed)))
    return Number(trimmed);
  if (trimmed === "null") return null;
  return text;
}

function Faults({ path }: { path: JSONPath }) {
  const { faults } = useForm();
  const here = formatPath(path);
  const found = faults.filter((fault) => fault.path === here);
  if (found.length === 0) return null;
  return (
    <ul class="faults">
      {found.map(({ words }) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  );
}

function asRecord(value: unknown): Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Record<string, unknown>) : {};
}

const LAYOUT = { formattingOptions: { tabSize: 2, insertSpaces: true, eol: "\n" } };

/** The text with one value changed (undefined takes it out); everything else stays as it was written. */
export function setInText(text: string, path: JSONPath, value: unknown): string {
  return applyEdits(text, modify(text, path, value, LAYOUT));
}

/** The text with an element put into a list at an index. */
export function insertInText(text: string, list: JSONPath, index: number, value: unknown): string {
  return applyEdits(text, modify(text, [...list, index], value, { ...LAYOUT, isArrayInsertion: true }));
}
