import { access } from "./access";
import { engineFigures } from "./engine-figures";
import { chassisFiguresOf } from "./item-chassis";
import { chassisItems } from "./items-chassis";
import { engineItems } from "./items-engine";
import { operationItems } from "./items-operations";
import { modelChassis } from "./model-chassis";
import { models } from "./models";
import { blowerOperations } from "./operations-blower";
import { calibrationOperations } from "./operations-calibration";
import { chassisOperations } from "./operations-chassis";
import { fuelOperations } from "./operations-fuel";
import { inspectionOperations } from "./operations-inspection";
import { groups, packages } from "./packages";
import { powerItemFigures } from "./power-item-figures";
import { boostRules } from "./rules-boost";
import { capacityRules } from "./rules-capacity";
import { chassisRules } from "./rules-chassis";
import type { Catalogue } from "./types";

/** Everything the invented workshop sells and how it is done. Invented; the trade rules are common practice, no source. */
export const catalogue: Catalogue = {
  models: models.map((model) => ({
    ...model,
    figures: { ...engineFigures[model.id], ...modelChassis[model.id] },
  })),
  items: [...engineItems, ...chassisItems, ...operationItems].map((item) => ({
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
  ].sort((one, other) => one.order - other.order),
  groups,
  rules: [...boostRules, ...chassisRules, ...capacityRules],
  packages,
};
