import { boltTorque, gearingChange } from "@buildproof/engineering";
import type { LinePlot } from "./line-plot";

export function boltTorquePlot(): LinePlot {
  const factors = Array.from({ length: 23 }, (_, at) => 0.08 + at * 0.01);
  const torque = (thread: string) =>
    factors.map((frictionK) => {
      const { torqueNm } = boltTorque({ thread, propertyClass: "10.9", preloadPct: 75, frictionK });
      return [frictionK, torqueNm] as const;
    });
  return {
    title: "Torque to 75 % of the proof load, class 10.9",
    x: { label: "nut factor K", ticks: [0.08, 0.12, 0.16, 0.2, 0.24, 0.28, 0.3] },
    y: { label: "N·m", ticks: [0, 50, 100, 150, 200, 250, 300, 350] },
    lines: [
      { label: "M14", points: torque("M14"), dash: "2 4" },
      { label: "M12", points: torque("M12") },
      { label: "M10", points: torque("M10"), dash: "8 4" },
    ],
  };
}

export function gearingPlot(): LinePlot {
  const speeds = Array.from({ length: 9 }, (_, at) => 40 + at * 10);
  const engineRpm = (fittedTyre: string, fittedFinalDrive: number) =>
    speeds.map((atKmh) => {
      const question = { standardTyre: "265/70R17", fittedTyre, finalDrive: 3.9, fittedFinalDrive };
      return [atKmh, gearingChange({ ...question, gear: 0.7, atKmh }).engineRpmAfter] as const;
    });
  return {
    title: "Engine speed in top gear, 0.7",
    x: { label: "road speed, km/h", ticks: [40, 60, 80, 100, 120] },
    y: { label: "rpm", ticks: [0, 500, 1_000, 1_500, 2_000, 2_500] },
    lines: [
      { label: "265/70R17, 3.9", points: engineRpm("265/70R17", 3.9) },
      { label: "35-inch, 3.9", points: engineRpm("35x12.50R17LT", 3.9), dash: "2 4" },
      { label: "35-inch, 4.56", points: engineRpm("35x12.50R17LT", 4.56), dash: "8 4" },
    ],
  };
}
