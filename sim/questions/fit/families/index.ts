/** What can be fitted. */

import type { Family } from "../family.ts";
import { erlang } from "./erlang.ts";
import { exponential } from "./exponential.ts";
import { gamma } from "./gamma.ts";
import { lognormal } from "./lognormal.ts";
import { normal } from "./normal.ts";
import { pert } from "./pert.ts";
import { triangular } from "./triangular.ts";
import { weibull } from "./weibull.ts";

export const FAMILIES: readonly Family[] = [exponential, lognormal, gamma, weibull, erlang, normal, triangular, pert];
