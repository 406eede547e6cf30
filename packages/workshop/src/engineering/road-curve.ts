import { deliveredPower, forecastAssumptions, type GearCurve } from "@buildproof/engineering";
import { newtonMetres, powerFromTorque, revolutionsPerMinute } from "@buildproof/units";
import type { GearCap } from "./build-forecast";
import type { PowerPoint } from "./power-baseline";

/** Full load at the hubs, and in the gears in which a controller holds it. */
export type RoadCurve = { readonly curve: readonly PowerPoint[]; readonly gearCurves: readonly GearCurve[] };

export type HubsLoss = { readonly meshEfficiency?: number; readonly dragKwAt6000?: number };

/** A curve with the torque held in some gears; what is held at the crank arrives at the hubs less the driveline. */
export function roadCurve(
  curve: readonly PowerPoint[],
  caps: readonly GearCap[],
  { meshEfficiency, dragKwAt6000 }: HubsLoss,
): RoadCurve {
  const loss = {
    meshEfficiency: meshEfficiency ?? forecastAssumptions.meshEfficiency[0],
    dragKwAt6000: dragKwAt6000 ?? forecastAssumptions.dragKwAt6000[0],
    tyreEfficiency: 1,
  };
  const heldKw = (torqueNm: number, speedRpm: number) =>
    deliveredPower(
      powerFromTorque(newtonMetres(torqueNm), revolutionsPerMinute(speedRpm)),
      speedRpm,
      "hubs",
      loss,
    );
  const gears = [...new Set(caps.flatMap((cap) => cap.gears))];
  return {
    curve,
    gearCurves: gears.map((gear) => {
      const torqueNm = Math.min(...caps.filter((cap) => cap.gears.includes(gear)).map((cap) => cap.torqueNm));
      const held = curve.map(({ speedRpm, powerKw }) => ({
        speedRpm,
        powerKw: Math.min(powerKw, heldKw(torqueNm, speedRpm)),
      }));
      return { gear, curve: held };
    }),
  };
}

/** The same engine in air that leaves it a share of its power; a controller holds no less for that. */
export function inThinAir({ curve, gearCurves }: RoadCurve, share: number): RoadCurve {
  const thin = curve.map(({ speedRpm, powerKw }) => ({ speedRpm, powerKw: powerKw * share }));
  return {
    curve: thin,
    gearCurves: gearCurves.map(({ gear, curve: held }) => ({
      gear,
      curve: held.map(({ speedRpm, powerKw }, at) => ({
        speedRpm,
        powerKw: Math.min(powerKw, thin[at]?.powerKw ?? powerKw),
      })),
    })),
  };
}
