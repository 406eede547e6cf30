import { Chain } from "@/design/plots/chain";
import type { ChainPath } from "@/design/plots/chain-types";

/** What the product looks at, as a drawing: no vehicle, no numbers that could be taken for someone's. */
const paths: readonly ChainPath[] = [
  {
    id: "air",
    title: "Air and torque",
    links: [
      { id: "blower", name: "blower", asked: 0.81 },
      { id: "cooler", name: "cooler", asked: 0.88 },
      { id: "engine", name: "engine", asked: 0.72 },
      { id: "gearbox", name: "gearbox", asked: 0.97 },
      { id: "tyres", name: "tyres", asked: 0.64 },
    ],
  },
  {
    id: "fuel",
    title: "Fuel",
    joinsBefore: "engine",
    links: [
      { id: "pump", name: "pump", asked: 1.1, grade: "stop" },
      { id: "injectors", name: "injectors", asked: 0.84 },
    ],
  },
];

export function DoorPicture() {
  return (
    <Chain
      paths={paths}
      caption="A chain from blower to tyres, fuel joining before the engine; the pump is asked for more than it can give."
      weakest={{
        linkId: "pump",
        sentence: "A build is as good as its weakest link. Find it before the customer does.",
      }}
    />
  );
}
