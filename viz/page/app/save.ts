import { parseJson, setPathInPlace } from "../../../sim/asked/plan/index.ts";
import { safeFileName, stableJson } from "../../../sim/days/results/index.ts";
import { svgText } from "../../frame/index.ts";
import { writeLink } from "../plan/link.ts";
import { studyFile } from "../plan/studyFile.ts";
import { pictureOf } from "../scene/pictureOf.ts";
import * as state from "./state.ts";
import { shownTheme } from "./theme.ts";

/** Hands a file to the browser's own way of saving. */
function saveFile(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const anchor = document.createElement("a");
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  // The browser reads it after the click; a minute is ample.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
  state.notice.value = `Saved as ${name}.`;
}

export function savePlan(): void {
  saveFile(`${fileStem()}.json`, state.plan.value.text, "application/json");
}

/** The plan with all changes in it. */
export function saveVariant(): void {
  const json = structuredClone(parseJson(state.plan.value.text).value);
  for (const [path, value] of Object.entries(state.changes.value)) setPathInPlace(json, path, value);
  saveFile(`${fileStem()}-variant.json`, `${JSON.stringify(json, null, 2)}\n`, "application/json");
}

/** A study that `gambrel study` runs: the same plan, change, seed and days, so the same figures. */
export function saveStudy(): void {
  const study = studyFile({
    plan: parseJson(state.plan.value.text).value,
    set: state.changes.value,
    seed: state.seed.value,
    replications: state.REPLICATIONS,
    responses: state.results.value?.responses.map(({ key }) => key) ?? [],
  });
  saveFile(`${fileStem()}-study.json`, `${JSON.stringify(study, null, 2)}\n`, "application/json");
}

/** Copies a link with plan and changes in it; nobody but those who get it sees them, for no server is asked. */
export async function copyLink(): Promise<void> {
  const { name, text, files } = state.plan.value;
  const linked = {
    name,
    text,
    files,
    moves: { ...state.moves.value },
    seed: state.seed.value,
    replication: state.replication.value,
  };
  const packed = await writeLink(linked);
  if (packed === null) {
    state.notice.value = "This plan is too long for a link. Save it as a file instead.";
    return;
  }
  const link = `${location.href.split("#")[0]}#plan=${packed}`;
  history.replaceState(null, "", `#plan=${packed}`);
  try {
    await navigator.clipboard.writeText(link);
    state.notice.value = "The link is copied. It contains the plan and your changes, and is also in the address bar.";
  } catch {
    state.notice.value = "The link is in the address bar. It contains the plan and your changes.";
  }
}

/** Every figure on the page with all its digits, as the command line's `study --json` prints them. */
export function saveFigures(): void {
  if (state.results.value === null) return;
  saveFile(`${fileStem()}-figures.json`, stableJson(state.results.value), "application/json");
}

/** Both lines as they are drawn now. */
export async function savePicture(kind: "svg" | "png"): Promise<void> {
  const picture = currentPicture();
  if (picture === null) return;
  const name = `${fileStem()}-${picture.clock.replaceAll(":", "")}`;
  const text = svgText(picture.svg);
  if (kind === "svg") saveFile(`${name}.svg`, text, "image/svg+xml");
  else saveFile(`${name}.png`, await rastered(text, picture.width, picture.height), "image/png");
}

function currentPicture(): ReturnType<typeof pictureOf> | null {
  const [base, variant] = [state.courses.base.value, state.courses.variant.value];
  if (base === null || variant === null) return null;
  const { seconds } = state.clock;
  return pictureOf(document, {
    title: state.planTitle.value,
    change: state.changeWords.value,
    base,
    variant,
    seconds,
    theme: shownTheme.value,
  });
}

/** Twice as fine as the screen's pixels: sharp on paper too. */
const FINENESS = 2;

async function rastered(svg: string, width: number, height: number): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    const image = new Image(width, height);
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = width * FINENESS;
    canvas.height = height * FINENESS;
    canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob((blob) => (blob === null ? reject(new Error("the picture is too large")) : resolve(blob))),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}

function fileStem(): string {
  return safeFileName(state.planTitle.value);
}
