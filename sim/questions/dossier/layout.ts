import type { LineRoom } from "../../asked/plan/index.ts";

/** Kinds of rooms by hygiene: who may go where, what is cleaned and aired how. */
export const ROOM_KINDS = [
  "live side",
  "unclean side",
  "clean side",
  "cold room",
  "by-products",
  "people",
  "corridor",
  "services",
  "yard",
] as const;
export type RoomKind = (typeof ROOM_KINDS)[number];

/** A rectangle in metres; x to the right in the direction of the product, y down the sheet, both from the upper left corner of the building. */
export interface Rectangle {
  x: number;
  y: number;
  width: number;
  depth: number;
}

/** A room, clear of its walls. */
export interface LayoutRoom extends Rectangle {
  name: string;
  kind: RoomKind;
  /** Of the line's rooms; null for all others. */
  lineRoom: LineRoom | null;
  squareMetres: number;
  /** Of the floor that its contents ask for; the rest is there because rooms stand in rows. */
  neededSquareMetres: number;
  /** How that was worked out, with its figures: "90 crates in stacks of 5 ...". */
  why: string;
  /** Most people who work in it at once. */
  people: number;
}

export const DOOR_USES = ["product", "people", "by-products", "crates", "goods"] as const;
export type DoorUse = (typeof DOOR_USES)[number];

/** An opening in the wall, in the direction in which it is mostly gone through; null is outdoors. `x`, `y` are its middle. */
export interface LayoutDoor {
  from: string | null;
  to: string | null;
  x: number;
  y: number;
  /** True: it stands in an upright wall. */
  upright: boolean;
  clearMetres: number;
  use: DoorUse;
}

export interface Spot {
  x: number;
  y: number;
}

/** What a stretch of the rail is for. `joins`: added so that the rail gets round a bend or through a wall; no head has time for it in the plan. */
export const RAIL_USES = ["places", "positions", "way", "joins"] as const;
export type RailUse = (typeof RAIL_USES)[number];

/** A stretch of overhead rail, as a broken line; its length is that of the line, exactly. */
export interface RailStretch {
  /** Of a way: the stage that heads come from. */
  stage: string;
  room: string;
  use: RailUse;
  metres: number;
  points: Spot[];
}

/** Where one position of a stage is worked at: a person's place or a machine. */
export interface WorkPlace extends Rectangle {
  stage: string;
  room: string;
  machine: boolean;
}

/** What stands on the floor and is counted: stacks of crates, rails of the chiller, containers, lorries. */
export interface FloorItem extends Rectangle {
  room: string;
  what: "crate stack" | "crate conveyor" | "chiller rail" | "container" | "crate washer" | "lorry";
  /** Crates in the stack, hooks on the rail; 1 for all others. */
  holds: number;
}

/** A stage on the rail. */
export interface StageLength {
  stage: string;
  room: string;
  /** Places before it, and what one takes. Of a chain or a stage that holds heads: all of its places. */
  places: number;
  placeMetres: number;
  positions: number;
  positionMetres: number;
  /** places x placeMetres + positions x positionMetres. */
  plannedMetres: number;
  /** Of its stretches as drawn. */
  drawnMetres: number;
  /** Middle of its work places; of a stage without any, of its rail. */
  middle: Spot;
}

/** The way from one stage to the next: what its time in the plan allows, beside what is drawn. */
export interface WayCheck {
  from: string;
  to: string;
  plannedSeconds: number;
  metresPerSecond: number;
  plannedMetres: number;
  /** With what joins the rail round bends and through walls. */
  drawnMetres: number;
  /** What the drawn way takes at that speed. */
  drawnSeconds: number;
}

/** A crew's walks between the places where it works, beside the walking time in the plan. */
export interface WalkCheck {
  crew: string;
  /** The two of its places that lie furthest apart on foot, and the mean over all pairs. */
  from: string;
  to: string;
  farthestMetres: number;
  meanMetres: number;
  /** At the walking speed. */
  farthestSeconds: number;
  meanSeconds: number;
  plannedSeconds: number;
  /** "enough": the plan's time covers the farthest walk; "mean only": the mean alone; "too short": neither. */
  verdict: "enough" | "mean only" | "too short";
  /** The rooms that they have to go through; more than one hygiene zone is a fault to talk about. */
  zones: RoomKind[];
}

/**
 * A schematic of the plant, to talk about, not to build from. All lengths in metres. Made by `plantLayout`; drawn by `viz` at any scale.
 */
export interface PlantLayout {
  name: string;
  /** The building without its yard. */
  building: Rectangle;
  /** Everything that is drawn: the building and the yard. */
  bounds: Rectangle;
  wallMetres: number;
  rooms: LayoutRoom[];
  doors: LayoutDoor[];
  rail: RailStretch[];
  workPlaces: WorkPlace[];
  items: FloorItem[];
  stages: StageLength[];
  ways: WayCheck[];
  walks: WalkCheck[];
  chiller: ChillerFloor | null;
  areas: AreaRow[];
  /** What does not fit the plan or a published figure, in words; worst first. */
  findings: string[];
  figures: SiteFigureUsed[];
}

export interface ChillerFloor {
  hooks: number;
  hooksDrawn: number;
  rails: number;
  aisles: number;
  squareMetres: number;
  hooksPerSquareMetre: number;
}

/** Floor by kind of room; the last row is the building. */
export interface AreaRow {
  kind: RoomKind | "walls" | "building";
  rooms: number;
  squareMetres: number;
}

/** A figure about building or services, and whether the plan gives it. */
export interface SiteFigureUsed {
  /** Below `site` of a plan. */
  key: string;
  what: string;
  /** With its unit, as a plan writes it. */
  value: string;
  source: "given" | "assumed" | "common practice" | "published";
  note: string;
}
