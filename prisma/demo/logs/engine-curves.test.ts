import { expect, test } from "vitest";
import { modelChassis } from "../catalogue/model-chassis";
import { engineCurves } from "./engine-curves";

/** The gear nearest 1:1 times the final drive: what the import holds engine and hubs to. */
test.each(["ridgewold-57", "ridgewold-57-lift", "orrismere-gt44", "vale-30td"] as const)(
  "the made logs of %s turn the hubs in its gear nearest 1:1",
  (model) => {
    const { gearRatios, finalDrive } = modelChassis[model].driveline;
    const [nearest = 0] = gearRatios.toSorted((a, b) => Math.abs(Math.log(a)) - Math.abs(Math.log(b)));
    for (const kind of ["baseline", "proof"] as const)
      expect(Math.abs(engineCurves(model, kind).ratio / (nearest * finalDrive) - 1)).toBeLessThan(0.005);
  },
);
