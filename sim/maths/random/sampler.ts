import { unknownFamily, type Varying } from "../varying/index.ts";
import { pertBeta, type TabledShape } from "./quantile.ts";
import { type QuantileTable, quantileTable } from "./quantileTable.ts";
import type { Quantiles, UniformStream } from "./uniforms.ts";

const CONSTANT = 0;
const TABLE = 1;
const UNIFORM = 2;
const TRIANGULAR = 3;
const EMPIRICAL = 4;

const NO_VALUES = new Float64Array(0);

/**
 * Draws one varying quantity: exactly one uniform per variate, by inversion; none for a constant.
 *
 * One class for every family keeps the call in the event loop monomorphic.
 */
export class Sampler implements Quantiles {
  private readonly kind: number;
  private readonly shift: number;
  private readonly scale: number;
  /** Triangular: probability below the mode, and the three limits are shift, mode, shift + scale. */
  private readonly split: number;
  private readonly table: QuantileTable | null;
  private readonly values: Float64Array;
  private readonly uniforms: UniformStream;

  constructor(varying: Varying, uniforms: UniformStream) {
    const form = inversionOf(varying);
    this.kind = form.kind;
    this.shift = form.shift;
    this.scale = form.scale;
    this.split = form.split;
    this.table = form.shape === null ? null : quantileTable(form.shape);
    this.values = form.values;
    this.uniforms = uniforms;
  }

  draw(): number {
    if (this.kind === CONSTANT) return this.shift;
    return this.quantile(this.uniforms.next());
  }

  /** As so many draws, one after another, into `values[from]` up to `values[to - 1]`: in a row they cost half as much. */
  drawInto(values: Float64Array, from: number, to: number): void {
    if (this.kind === CONSTANT) {
      values.fill(this.shift, from, to);
      return;
    }
    this.uniforms.fill(values, from, to, this);
  }

  /** Value at lower-tail probability `u`, 0 <= u <= 1. */
  quantile(u: number): number {
    switch (this.kind) {
      case TABLE:
        return this.shift + this.scale * this.table!.at(u);
      case UNIFORM:
        return this.shift + this.scale * u;
      case TRIANGULAR:
        return this.triangular(u);
      case EMPIRICAL:
        return this.values[Math.min(Math.floor(u * this.values.length), this.values.length - 1)]!;
      default:
        return this.shift;
    }
  }

  private triangular(u: number): number {
    const { split, shift, scale } = this;
    if (u < split) return shift + scale * Math.sqrt(u * split);
    return shift + scale * (1 - Math.sqrt((1 - u) * (1 - split)));
  }
}

interface Inversion {
  kind: number;
  shift: number;
  scale: number;
  split: number;
  shape: TabledShape | null;
  values: Float64Array;
}

function inversionOf(varying: Varying): Inversion {
  switch (varying.family) {
    case "constant":
      return plain(CONSTANT, varying.value, 0);
    case "uniform":
      return varying.max > varying.min
        ? plain(UNIFORM, varying.min, varying.max - varying.min)
        : plain(CONSTANT, varying.min, 0);
    case "triangular":
      return triangularForm(varying);
    case "empirical":
      return { ...plain(EMPIRICAL, 0, 1), values: Float64Array.from(varying.values).sort() };
    case "exponential":
      return tabled({ family: "exponential" }, 0, varying.mean);
    case "erlang":
      return tabled({ family: "gamma", cv: 1 / Math.sqrt(varying.k) }, 0, varying.mean);
    case "pert":
      return varying.max > varying.min
        ? tabled({ family: "beta", ...pertBeta(varying) }, varying.min, varying.max - varying.min)
        : plain(CONSTANT, varying.min, 0);
    case "normal":
      return varying.sd > 0
        ? tabled({ family: "normal", cut: -varying.mean / varying.sd }, varying.mean, varying.sd)
        : plain(CONSTANT, varying.mean, 0);
    case "lognormal":
    case "gamma":
    case "weibull":
      return varying.cv > 0
        ? tabled({ family: varying.family, cv: varying.cv }, 0, varying.mean)
        : plain(CONSTANT, varying.mean, 0);
    default:
      throw unknownFamily(varying);
  }
}

function triangularForm(varying: Extract<Varying, { family: "triangular" }>): Inversion {
  const span = varying.max - varying.min;
  if (span <= 0) return plain(CONSTANT, varying.min, 0);
  return { ...plain(TRIANGULAR, varying.min, span), split: (varying.mode - varying.min) / span };
}

function plain(kind: number, shift: number, scale: number): Inversion {
  return { kind, shift, scale, split: 0, shape: null, values: NO_VALUES };
}

function tabled(shape: TabledShape, shift: number, scale: number): Inversion {
  return { ...plain(TABLE, shift, scale), shape };
}
