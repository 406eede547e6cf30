import { access } from "./access";
import { allItems } from "./all-items";
import { engineFigures } from "./engine-figures";
import { groups } from "./groups";
import { chassisFiguresOf } from "./item-chassis";
import { modelChassis } from "./model-chassis";
import { models } from "./models";
import { blowerOperations } from "./operations-blower";
import { calibrationOperations } from "./operations-calibration";
import { chassisOperations } from "./operations-chassis";
import { checkOperations } from "./operations-checks";
import { dieselElectricOperations } from "./operations-diesel-electrics";
import { drivelineOperations } from "./operations-driveline";
import { engineOptionOperations } from "./operations-engine-options";
import { fuelOperations } from "./operations-fuel";
import { inspectionOperations } from "./operations-inspection";
import { towingBodyOperations } from "./operations-towing-body";
import { wheelBrakeOperations } from "./operations-wheels-brakes";
import { packages } from "./packages";
import { powerItemFigures } from "./power-item-figures";
import { bodyRules } from "./rules-body";
import { boostRules } from "./rules-boost";
import { brakeTowRules } from "./rules-brakes-towing";
import { capacityRules } from "./rules-capacity";
import { chassisRules } from "./rules-chassis";
import { drivelineRules } from "./rules-driveline";
import { dutyPointRules } from "./rules-duty-point";
import { fuelServiceRules } from "./rules-fuel-service";
import { loadRules } from "./rules-loads";
import { wheelRules } from "./rules-wheels";
import { small4wdRules } from "./small-4wd-power";
import type { Catalogue } from "./types";

/** Everything the invented workshop sells and how it is done. Invented; the trade rules are common practice, no source. */
export const catalogue: Catalogue = {
  models: models.map((model) => ({
    ...model,
    figures: { ...engineFigures[model.id], ...modelChassis[model.id] },
  })),
  items: allItems.map((item) => ({
    ...item,
    figures: { ...item.figures, ...powerItemFigures[item.id], ...chassisFiguresOf(item.id) },
  })),
  access,
  operations: [
    ...inspectionOperations,
    ...blowerOperations,
    ...fuelOperations,
    ...calibrationOperations,
    ...chassisOperations,
    ...engineOptionOperations,
    ...dieselElectricOperations,
    ...drivelineOperations,
    ...wheelBrakeOperations,
    ...towingBodyOperations,
    ...checkOperations,
  ].sort((one, other) => one.order - other.order),
  groups,
  rules: [
    ...boostRules,
    ...chassisRules,
    ...capacityRules,
    ...loadRules,
    ...dutyPointRules,
    ...fuelServiceRules,
    ...drivelineRules,
    ...wheelRules,
    ...brakeTowRules,
    ...bodyRules,
    ...small4wdRules,
  ],
  packages,
};
