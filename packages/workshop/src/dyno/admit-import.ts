import { ok } from "../core/result";
import { query } from "../core/use-case";
import { checkGear } from "./check-drive";
import { correctSetUp } from "./correct-set-up";
import { dynoSetUp } from "./dyno-fields";
import { refuse } from "./dyno-refusals";
import { runsTheDyno } from "./dyno-skill";
import { measuredVehicle } from "./measured-vehicle";

/** Whether a log may be taken under this set-up, asked before a byte of it is sent for nothing. */
export const admitDynoImport = query({
  name: "dyno.admit-import",
  permission: "dyno:write",
  input: dynoSetUp,
  async run({ tx, person }, setUp) {
    if (!runsTheDyno(person)) return refuse("skill-missing");
    const measured = await measuredVehicle(tx, setUp);
    if (!measured.ok) return measured;
    const gear = checkGear(setUp);
    if (!gear.ok) return gear;
    const correction = correctSetUp(setUp, measured.value.engine);
    if (!correction.ok) return correction;
    return ok({ factor: correction.value.factor, valid: correction.value.valid });
  },
});
