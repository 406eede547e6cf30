import type { BuildTrait } from "./obligation";

/** An item of a catalogue, as far as obligations turn on it. */
export type TraitItem = {
  readonly code: string;
  readonly system: string;
  readonly kind: string;
  readonly maker: string;
  readonly serialised: boolean;
};

/** Items that bring an obligation by being what they are. */
const traitOfItem: Readonly<Record<string, BuildTrait>> = {
  "engineer-certificate": "certificate-promised",
  "retorque-visit": "re-torque-promised",
  "camera-recalibration": "camera-recalibration",
  "tyre-placard": "tyre-placard",
  "brake-controller": "trailer-brakes",
};

/** What choosing an item makes of a build. */
export function traitsOfItem(item: TraitItem): readonly BuildTrait[] {
  const traits: BuildTrait[] = [];
  const named = traitOfItem[item.code];
  if (named) traits.push(named);
  // The numbered kit of the air path is its blower.
  if (item.system === "air" && item.kind === "kit" && item.serialised) traits.push("forced-induction");
  if (item.kind === "calibration") traits.push("calibration-changed");
  if (item.system === "exhaust") traits.push("exhaust-changed");
  if (item.system === "wheels-tyres") traits.push("ride-height-or-tyres-changed");
  if (item.serialised && item.maker !== "workshop") traits.push("warranted-parts");
  return traits;
}
