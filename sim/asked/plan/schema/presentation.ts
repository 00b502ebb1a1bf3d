import { z } from "zod";
import { LIVE_WEIGHTS, WEIGHED } from "../plan.ts";
import { share } from "./readBy.ts";
import { record } from "./record.ts";

const onOrOff = (what: string) =>
  z.enum(["on", "off"]).describe(`Whether ${what} when the carcass is weighed and sold.`);

/** A yield means nothing without these four. */
function tags() {
  return {
    head: onOrOff("the head is on"),
    paws: onOrOff("the paws are on"),
    weighed: z.enum(WEIGHED).describe("Weighed hot, before the chiller, or cold, after it."),
    liveWeight: z
      .enum(LIVE_WEIGHTS)
      .describe("Live weight that yields are a share of and that is paid for: at the farm or just before slaughter."),
  };
}

/** What is sold as a carcass. */
export function presentation() {
  return record({
    ...tags(),
    liver: onOrOff("the liver is in it"),
    kidneys: onOrOff("the kidneys are in it"),
    heartAndLungs: onOrOff("heart, lungs and windpipe are in it"),
    chillLoss: share()
      .nullable()
      .default(null)
      .describe("Drip: share of the hot carcass that is lost in the chiller. Default: null, not given."),
    journeyLoss: share()
      .nullable()
      .default(null)
      .describe(
        "Share of the weight at the farm that is lost in transport and fasting. Needed where the live weight is that at the farm. Default: null, not given.",
      ),
    yield: record({ ...tags(), share: share().describe("Carcass as a share of live weight.") })
      .nullable()
      .default(null)
      .describe("A yield that the line is held against, with the presentation that it is of. Default: null, none."),
  });
}

/** What an animal is made of. No defaults: no published table has all of it. */
export function bodyParts() {
  const part = (what: string) => share().describe(`${what}, as a share of the live weight at slaughter.`);
  return record({
    blood: part("Blood that is bled"),
    skin: part("Skin with its fur"),
    head: part("Head, skinned"),
    forePaws: part("Both fore paws"),
    hindPaws: part("Both hind paws"),
    gut: part("Full digestive tract with the bladder"),
    liver: part("Liver without the gall"),
    kidneys: part("Both kidneys"),
    heartAndLungs: part("Heart, lungs, windpipe"),
    rest: part("All else: muscle, bone, fat"),
  });
}
