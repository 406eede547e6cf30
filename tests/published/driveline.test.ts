import { crankPower, deliveredPower, driveSlip } from "@buildproof/engineering";
import { expect, test } from "vitest";
import { engineeringVectors } from "./expect-vector";
import { unusedVectors } from "./reference-vectors";

// The source and the standing of every value are in shared/reference/driveline.json.
const vector = engineeringVectors("driveline.json");
const SPEED_RPM = 6_000;

test.each(["drivetrain-200", "drivetrain-300"])("%s: crank figure from drag and mesh", (id) => {
  const { given, expects } = vector(id);
  const loss = { dragKwAt6000: given("P_drag"), meshEfficiency: given("eta_mesh"), tyreEfficiency: 1 };
  const wheel = given("P_wheel");
  const crank = crankPower(wheel, SPEED_RPM, "hubs", loss);
  expects("P_crank", crank);
  expects("loss_pct", 100 * (1 - wheel / crank));
  expect(deliveredPower(crank, SPEED_RPM, "hubs", loss)).toBeCloseTo(wheel, 9);
});

test("tyre-slip: slip on a roller is what the drive strays from its ratio", () => {
  const { given, expects } = vector("tyre-slip");
  const wheelOverRoad = { engineRpm: 3_000, ratio: (given("omega") * given("r")) / given("v") };
  const trace = { least: wheelOverRoad, greatest: wheelOverRoad, mean: wheelOverRoad.ratio };
  const { worstPct, outcome } = driveSlip(trace, 1);
  expects("s", 1 - 1 / (1 + worstPct / 100));
  expect(outcome).toBe("another-ratio");
});

test("100 kW more at the wheel is 103 at the crank, not the 117.6 of a fixed 15 %", () => {
  const loss = { dragKwAt6000: 12, meshEfficiency: 0.97, tyreEfficiency: 1 };
  const gain = crankPower(300, SPEED_RPM, "hubs", loss) - crankPower(200, SPEED_RPM, "hubs", loss);
  expect(gain).toBeCloseTo(100 / 0.97, 9);
  expect(gain).toBeLessThan(100 / 0.85 - 14);
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("driveline.json")).toEqual([]);
});
