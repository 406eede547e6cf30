import { bodyCheckItems } from "./items-body-checks";
import { boostOptionItems } from "./items-boost-options";
import { brakeTowItems } from "./items-brakes-towing";
import { chassisItems } from "./items-chassis";
import { drivelineItems } from "./items-driveline";
import { engineItems } from "./items-engine";
import { fuelIgnitionItems } from "./items-fuel-ignition";
import { operationItems } from "./items-operations";
import { wheelItems } from "./items-wheels";
import { small4wdItems } from "./small-4wd-power";
import type { CatalogueItem } from "./types";

/** Every item of the price list, in the order of the list; of two that change the same thing the later one holds. */
export const allItems: readonly CatalogueItem[] = [
  ...engineItems,
  ...boostOptionItems,
  ...fuelIgnitionItems,
  ...chassisItems,
  ...drivelineItems,
  ...wheelItems,
  ...brakeTowItems,
  ...operationItems,
  ...bodyCheckItems,
  ...small4wdItems,
];
