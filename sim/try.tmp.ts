import { runDay } from "/work/wt/size/sim/engine/index.ts";
import { compileLine } from "/work/wt/size/sim/line/index.ts";
import { measure } from "/work/wt/size/sim/observations/index.ts";
import { readDemand, sizePlant } from "/work/wt/size/sim/size/index.ts";
import { ALTERNATIVES } from "/work/wt/size/sim/size/alternatives.ts";
const NO = { readText: () => { throw new Error("no"); } };
for (const heads of process.argv.slice(2).map(Number)) {
  const { demand, faults } = readDemand({ name: "t", week: { heads, days: 5 }, day: { shifts: [{ name: "day", from: "06:00", to: "14:30" }], breaks: [{name:"b1",at:"09:00",length:"15 min"},{ name: "lunch", at: "11:45", length: "30 min" }] } }, NO);
  if (!demand) { console.log(faults); continue; }
  for (const name of ALTERNATIVES) {
    const { design, plan, faults } = sizePlant(demand, NO, name);
    if (!design) { console.log(name, faults); continue; }
    const days = [0,1,2].map((replication) => runDay(compileLine(plan), { seed: "x", replication, check: false }));
    const ms = days.map((d) => measure(d, plan));
    const f = (k: string) => (ms.reduce((s, m) => s + (m[k] ?? 0), 0) / 3);
    const start = plan.day.startClockSeconds;
    console.log(heads, name, design.people, "bal", design.balance.toFixed(2), "need", design.needed.carcassesPerHour.toFixed(0), "est", design.estimate.headsPerHour.toFixed(0), "sim", f("headsPerHour").toFixed(0), "finish", ((start + f("finish"))/3600).toFixed(2), "est", ((start+design.estimate.workFinishSeconds)/3600).toFixed(2), "beyond", f("beyond.stun to stick"), f("beyond.kill to chill"), "water", f("water").toFixed(0), (design.utilities.litresPerDay).toFixed(0), design.changes.join(";"));
    if (name.startsWith("compact")) for (const c of design.crews) console.log("   ", c.name, c.people, c.load.toFixed(2), c.steps.join(","));
  }
}
