import type { Plan } from "../../asked/plan/plan.ts";
import type { StageColumns } from "./compiledLine.ts";
import { rowRanges } from "./rowRanges.ts";
import { byProductsOf, type Step } from "./steps.ts";

type Products = Pick<
  StageColumns,
  "productFrom" | "productName" | "productShare" | "productOfLive" | "productVessel" | "vesselFrom" | "vessel"
>;

/** Everything that is taken off heads, named in the order in which the line first meets it. */
export function productsOf(all: Step[]): string[] {
  return [...new Set(all.flatMap((step) => byProductsOf(step).map((product) => product.name)))];
}

export function compileProducts(plan: Plan, all: Step[]): Products {
  const names = productsOf(all);
  const vessels = plan.vessels.map((vessel) => vessel.name);
  const products = all.map(byProductsOf);
  const stopping = products.map((list) => {
    const fed = new Set(list.map((product) => vessels.indexOf(product.vessel ?? "")));
    return [...fed].filter((vessel) => vessel >= 0 && plan.vessels[vessel]!.whenFull === "stop");
  });
  return {
    productFrom: rowRanges(products.map((list) => list.length)),
    productName: Int32Array.from(products.flat(), (product) => names.indexOf(product.name)),
    productShare: Float64Array.from(products.flat(), (product) => product.share),
    productOfLive: Int8Array.from(products.flat(), (product) => (product.of === "live weight" ? 1 : 0)),
    productVessel: Int32Array.from(products.flat(), (product) => vessels.indexOf(product.vessel ?? "")),
    vesselFrom: rowRanges(stopping.map((list) => list.length)),
    vessel: Int32Array.from(stopping.flat()),
  };
}
