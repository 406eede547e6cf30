import { caution } from "./caution";
import { onHoist } from "./operation";
import { hold, measure, serial, tick } from "./step";
import type { Operation } from "./types";

/** Tests and second visits that are sold by name. Limits are common practice unless the law's own stand beside them. */
export const checkOperations: readonly Operation[] = [
  onHoist({
    id: "measure-power-runs",
    name: "Three power runs",
    ownHours: 0.7,
    rate: "dyno",
    access: ["hub-strap-in"],
    stage: "proof",
    order: 139,
    skill: "dyno",
    place: "dyno",
    steps: [
      measure("gearbox-oil", "Gearbox oil temperature before the first run.", "°C", 60, 95, {
        cautions: [caution.dynoRestraint, caution.dynoAir],
      }),
      measure("ramp", "Ramp rate.", "rpm/s", 350, 450, { target: 400, cautions: [caution.dynoAbort] }),
      measure("spread", "Three runs: spread of corrected peak power.", "%", 0, 2),
    ],
  }),
  onHoist({
    id: "calibrate-again",
    name: "Calibrate again on the dyno",
    ownHours: 1.5,
    rate: "dyno",
    access: ["hub-strap-in"],
    stage: "calibration",
    order: 135,
    skill: "calibration",
    place: "dyno",
    steps: [
      tick("reason", "What is to be better, from the road log.", {
        cautions: [caution.dynoRestraint, caution.dynoAir, caution.dynoAbort],
      }),
      serial("revision", "Calibration revision released and its file hash.", {
        cautions: [caution.emissions],
      }),
    ],
  }),
  onHoist({
    id: "smoke-test-intake",
    name: "Smoke test of the intake",
    ownHours: 0.6,
    access: [],
    order: 96,
    place: "floor",
    steps: [tick("leaks", "No smoke at 10 kPa from airbox to valves; each leak photographed.")],
  }),
  onHoist({
    id: "test-cooling",
    name: "Pressure test of the cooling system",
    ownHours: 0.5,
    access: [],
    order: 97,
    place: "floor",
    steps: [
      measure("loss", "Loss over ten minutes at the cap's pressure.", "kPa", 0, 7, {
        cautions: [caution.hotCoolant],
      }),
      measure("cap", "Cap opens at.", "kPa", 100, 150),
    ],
  }),
  onHoist({
    id: "measure-noise",
    name: "Stationary noise test",
    ownHours: 0.6,
    access: [],
    order: 155,
    stage: "road-test",
    place: "floor",
    steps: [
      serial("signature", "Stationary figure and engine speed recorded for this model."),
      measure("noise", "0.5 m from the outlet at 45°, mean of three.", "dB(A)", 60, 96),
    ],
  }),
  onHoist({
    id: "test-brakes",
    name: "Brake test and bedding-in",
    ownHours: 0.9,
    access: [],
    stage: "road-test",
    order: 148,
    place: "road",
    steps: [
      tick("yard", "Three stops at walking pace in the yard, then bedding-in as the pad's maker says.", {
        cautions: [caution.brakes, caution.roadTest],
      }),
      measure("balance", "Left to right difference, front.", "%", 0, 20),
      hold("brakes-safe", "Second person: pedal, balance and warning lamp are as they should be."),
    ],
  }),
  onHoist({
    id: "check-wheel-nuts",
    name: "Check wheel nuts after 50 to 100 km",
    ownHours: 0.2,
    access: [],
    stage: "after",
    order: 198,
    place: "floor",
    steps: [measure("nuts", "Wheel nuts, in a star, lowest.", "N·m", 114, 147)],
  }),
  onHoist({
    id: "weigh-vehicle",
    name: "Weigh axle by axle",
    ownHours: 0.5,
    access: [],
    stage: "road-test",
    order: 156,
    place: "bought-in",
    steps: [
      tick("as-travelled", "Tanks full, people aboard, trailer on, as it travels.", {
        cautions: [caution.trailerBrakes],
      }),
      measure("front", "Front axle.", "kg", 500, 2_000),
      measure("rear", "Rear axle.", "kg", 400, 2_300),
      serial("ticket", "Ticket number of the weighbridge."),
    ],
  }),
  onHoist({
    id: "drive-lane-change",
    name: "Lane-change test with the signatory",
    ownHours: 0.6,
    access: [],
    stage: "road-test",
    order: 157,
    place: "bought-in",
    steps: [
      tick("ground", "Closed ground, stability control on, signatory present.", {
        cautions: [caution.roadTest],
      }),
      hold("passed", "The signatory signs the test sheet.", { signer: "signatory" }),
    ],
  }),
];
