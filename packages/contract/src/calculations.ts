import type { Calculation } from "./calculation";
import { abnCalculation } from "./schemas/abn";
import { accelerationCalculation } from "./schemas/acceleration";
import { blowerCalculation } from "./schemas/blower";
import { boltTorqueCalculation } from "./schemas/bolt-torque";
import { dynoCorrectionCalculation } from "./schemas/dyno-correction";
import { fuelDemandCalculation } from "./schemas/fuel-demand";
import { fuelSupplyCalculation } from "./schemas/fuel-supply";
import { labourCalculation } from "./schemas/labour";
import { planCalculation } from "./schemas/plan";
import { powerForecastCalculation } from "./schemas/power-forecast";
import { prerequisitesCheckCalculation } from "./schemas/prerequisites-check";
import { prerequisitesCompleteCalculation } from "./schemas/prerequisites-complete";
import { quoteTotalsCalculation } from "./schemas/quote-totals";
import { speedometerCalculation } from "./schemas/speedometer";
import { tyreCalculation } from "./schemas/tyre";
import { unitConvertCalculation } from "./schemas/unit-convert";
import { vinCalculation } from "./schemas/vin";

/** The public calculations by name. A calculation that is not here does not exist outside. */
export const calculations: ReadonlyMap<string, Calculation> = new Map([
  ["unit-convert", unitConvertCalculation],
  ["vin", vinCalculation],
  ["abn", abnCalculation],
  ["tyre", tyreCalculation],
  ["speedometer", speedometerCalculation],
  ["bolt-torque", boltTorqueCalculation],
  ["acceleration", accelerationCalculation],
  ["dyno-correction", dynoCorrectionCalculation],
  ["blower", blowerCalculation],
  ["fuel-demand", fuelDemandCalculation],
  ["fuel-supply", fuelSupplyCalculation],
  ["power-forecast", powerForecastCalculation],
  ["labour", labourCalculation],
  ["quote-totals", quoteTotalsCalculation],
  ["prerequisites-check", prerequisitesCheckCalculation],
  ["prerequisites-complete", prerequisitesCompleteCalculation],
  ["plan", planCalculation],
]);
