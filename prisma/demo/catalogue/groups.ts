import type { ItemGroup } from "./types";

const atMostOne = (id: string, name: string, ...items: readonly string[]): ItemGroup => ({
  id,
  name,
  pick: "at-most-one",
  items,
});

/** Of each only one has its place on the vehicle. */
export const groups: readonly ItemGroup[] = [
  atMostOne("one-blower", "Blower", "blower-24-92", "blower-19-88", "blower-19-80", "blower-19-gt44"),
  atMostOne("one-pulley", "Blower pulley", "pulley-24-98", "pulley-24-86", "pulley-19-84", "pulley-gt44-96"),
  atMostOne("one-plug-set", "Spark plugs", "plugs-one-step", "plugs-two-step", "plugs-standard"),
  atMostOne("one-belt", "Blower belt", "belt-8-rib", "belt-10-rib"),
  atMostOne("one-alternative-fuel", "Fuel blend", "runs-on-e10", "runs-on-e85"),
  atMostOne("one-exhaust-57", "Exhaust behind the catalysts", "cat-back-exhaust", "rear-silencer-57"),
  atMostOne("one-clutch-gt44", "Clutch", "clutch-800", "clutch-standard-gt44"),
  atMostOne("one-rear-differential", "Rear differential", "limited-slip-gt44", "rear-locker"),
  atMostOne(
    "one-tyre-set",
    "Tyres",
    "tyres-33",
    "tyres-at-57",
    "tyres-at-30td",
    "tyres-19-gt44",
    "tyres-track-gt44",
    "tyres-tall-small-4wd",
    "tyres-at-bramlet",
  ),
  atMostOne(
    "one-pad-set",
    "Brake pads",
    "brake-pads-touring",
    "brake-pads-track-gt44",
    "brake-pads-bramlet",
    "brake-pads-standard",
  ),
  atMostOne("one-towing-duty", "Towing", "tow-2000", "tow-3000", "tow-3500", "tow-1000", "tow-750"),
  atMostOne("one-winch", "Winch", "high-mount-winch", "low-mount-winch"),
  atMostOne("one-front-brake", "Front brakes", "brake-kit-57", "brake-kit-gt44", "brake-discs-front"),
];
