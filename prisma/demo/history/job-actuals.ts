import type { DemoJob } from "../job-rows";
import type { Scene } from "../scene";
import { addCost } from "../work-rows";
import type { PlannedJob } from "./planned-job";
import type { Want } from "./wants";

const REWORK_HOURS = 2.3;

/** What the job cost beside clocked hours: a dyno hour is charged with its operator, so it is not clocked as well. */
export function addActualCosts(scene: Scene, job: DemoJob, planned: PlannedJob, want: Want): void {
  const { workshop } = scene;
  const { random, site } = workshop;
  const at = planned.finishedAt;
  if (planned.failsInspection) {
    addDynoCost(scene, job, 1.5, at);
    return;
  }
  const costOf = (isBoughtIn: boolean) =>
    planned.priced.items
      .filter((item) => (item.kind === "bought-in") === isBoughtIn)
      .reduce((sum, item) => sum + item.costCents, 0);
  addCost(
    scene,
    job,
    "parts",
    "Parts as invoiced",
    costOf(false) * (1 + random.normal(want.dearerParts, 0.014)),
    at,
  );
  addCost(scene, job, "boughtIn", "Bought-in work as invoiced", costOf(true) * random.normal(1.03, 0.03), at);
  const dynoHours = planned.priced.dynoHours * random.normal(1.05, 0.07) + planned.times.secondDynoHours;
  if (planned.priced.dynoHours > 0) addDynoCost(scene, job, dynoHours, at);
  const isBoosted = want.once === "boost";
  if (isBoosted) {
    addCost(
      scene,
      job,
      "other",
      "Loan car, card fee, freight of the crate",
      random.integer(440, 860) * 100,
      at,
    );
  } else if (random.chance(0.5)) {
    addCost(scene, job, "other", "Small material and card fee", random.integer(4, 26) * 100, at);
  }
  if (random.chance(want.comebacks)) {
    const cause = random.pick(["part", "fit", "calibration"]);
    // Small work comes back small.
    const hours = Math.min(REWORK_HOURS, planned.priced.labourHours / 3) * random.between(0.6, 1.5);
    const cost = hours * (site.labourCostMinorPerHour + random.integer(0, 60_00));
    const day = new Date(planned.handedOverAt.getTime() + random.integer(4, 60) * 86_400_000);
    const seen = day < workshop.anchor ? day : planned.handedOverAt;
    addCost(scene, job, "rework", `Came back: ${cause}, ${hours.toFixed(1)} h`, cost, seen);
  }
}

function addDynoCost(scene: Scene, job: DemoJob, hours: number, at: Date): void {
  const tenths = Math.round(hours * 10) / 10;
  addCost(
    scene,
    job,
    "dyno",
    `Dyno with operator, ${tenths.toFixed(1)} h`,
    tenths * scene.workshop.site.dynoCostMinorPerHour,
    at,
  );
}
