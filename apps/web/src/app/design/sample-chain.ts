import type { ChainPath } from "@/design/plots/chain-types";

/** The demo wagon with the larger blower and nothing done about its fuel. */
export const sampleChain: readonly ChainPath[] = [
  {
    id: "air",
    title: "Air and torque",
    links: [
      { id: "air-in", name: "air in" },
      { id: "blower", name: "blower", asked: 0.81, figures: "11,400 of 14,000 rpm" },
      { id: "cooler", name: "cooler", asked: 0.89, figures: "62 of 70 °C", grade: "fit" },
      { id: "engine", name: "engine", asked: 0.78, figures: "9.3 psi (64 kPa) at peak" },
      { id: "gearbox", name: "gearbox", asked: 0.97, figures: "720 of 740 N·m", grade: "watch" },
      { id: "final-drive", name: "final drive", asked: 0.7, measured: 0.74 },
      { id: "tyres", name: "tyres", asked: 0.68, note: "speedo reads 4 % low: recalibrate" },
    ],
  },
  {
    id: "fuel",
    title: "Fuel",
    joinsBefore: "engine",
    links: [
      { id: "tank-pump", name: "tank pump", asked: 0.71 },
      {
        id: "high-pressure-pump",
        name: "high-pressure pump",
        asked: 1.1,
        note: "short by 9 % at 6,000 rpm",
        grade: "stop",
      },
      { id: "injectors", name: "injectors", asked: 0.84 },
      { id: "window", name: "injection window", asked: 0.78 },
    ],
  },
];
