import { moreAccess } from "./access-chassis";
import { caution } from "./caution";
import { photo, tick, torque } from "./step";
import type { AccessWork } from "./types";

/*
 * Teardown and refit that operations share. Hours are out and back together; common practice, no source.
 * A second visit to the same place is work of its own (inspection, re-torque, the strap-in for the baseline),
 * so it has a name of its own and is counted again.
 */
export const access: readonly AccessWork[] = [
  {
    id: "undertray",
    name: "Undertray off and on",
    hours: 0.3,
    rate: "workshop",
    needs: [],
    out: [tick("out", "Undertray off, clips counted into the tray.", { cautions: [caution.hoist] })],
    back: [tick("back", "Undertray on, every clip home, nothing left on the crossmember.")],
  },
  {
    id: "front-end",
    name: "Front bar and carrier off and on",
    hours: 2.2,
    rate: "workshop",
    needs: ["undertray"],
    out: [
      tick("isolate", "Isolate the battery, wait the maker's time, then unplug bar, lamps and sensors.", {
        cautions: [caution.airbag, caution.battery],
      }),
      photo("gaps", "Photograph panel gaps and sensor brackets before anything is loosened."),
      tick("out", "Bar, lamps and carrier off onto padded stands.", { cautions: [caution.refrigerant] }),
    ],
    back: [
      tick("back", "Carrier, lamps and bar on; every plug clicked; panel gaps as in the photograph."),
      torque("carrier", "Front carrier bolts, four corners.", 25, 2),
    ],
  },
  {
    id: "intake",
    name: "Intake manifold off and on",
    hours: 1.8,
    rate: "workshop",
    needs: [],
    out: [
      tick("clean", "Blow out the valley and wipe down before the manifold lifts."),
      tick("out", "Manifold off, ports plugged at once with caps that are counted."),
      photo("ports", "Photograph the ports and valves of both banks."),
    ],
    back: [
      tick("caps", "All eight port caps out and counted; faces clean; new gaskets dry.", {
        oneUsePart: "intake gaskets",
      }),
    ],
  },
  {
    id: "coolant",
    name: "Coolant out and back",
    hours: 0.9,
    rate: "workshop",
    needs: ["undertray"],
    out: [tick("out", "Drain the coolant into a clean, covered tray.", { cautions: [caution.hotCoolant] })],
    back: [
      tick(
        "back",
        "Vacuum-fill the engine circuit; the vacuum holds for five minutes before coolant is let in.",
      ),
    ],
  },
  {
    id: "fuel-relief",
    name: "Fuel relief and leak test",
    hours: 0.5,
    rate: "workshop",
    needs: [],
    out: [
      tick("relieve", "Relieve the rail by the maker's routine and read zero on the gauge.", {
        cautions: [caution.fuelPressure, caution.fuelVapour],
      }),
    ],
    back: [
      tick("leaks", "Key on, no start: every fuel joint dry under lamp and cloth.", {
        cautions: [caution.fuelVapour],
      }),
    ],
  },
  {
    id: "belt-drive",
    name: "Belt drive off and on",
    hours: 0.5,
    rate: "workshop",
    needs: [],
    out: [photo("route", "Photograph the belt's route, then take it off.", { cautions: [caution.rotating] })],
    back: [
      tick("back", "Belt seated in every groove, tensioner mark within its window.", {
        cautions: [caution.rotating],
      }),
    ],
  },
  {
    id: "fan",
    name: "Cooling fan off and on",
    hours: 0.6,
    rate: "workshop",
    needs: [],
    out: [tick("out", "Fan unplugged, then out.", { cautions: [caution.fan] })],
    back: [tick("back", "Fan in, plug home, blades free all round.")],
  },
  {
    id: "coil-covers",
    name: "Coil covers off and on",
    hours: 0.4,
    rate: "workshop",
    needs: [],
    out: [tick("out", "Covers and coils out, coils kept in cylinder order.")],
    back: [torque("coils", "Coil bolts, all eight.", 8, 1)],
  },
  {
    id: "coil-covers-inspection",
    name: "Coil covers off and on, inspection visit",
    hours: 0.4,
    rate: "workshop",
    needs: [],
    out: [tick("out", "Covers and coils out, coils kept in cylinder order.")],
    back: [torque("coils", "Coil bolts, all eight.", 8, 1)],
  },
  {
    id: "wheels",
    name: "Wheels off and on",
    hours: 0.5,
    rate: "workshop",
    needs: [],
    out: [tick("out", "Wheels off, positions chalked.", { cautions: [caution.hoist] })],
    back: [torque("nuts", "Wheel nuts, in a star, vehicle on the ground.", 140, 7)],
  },
  {
    id: "dash-trim",
    name: "Dash trim off and on",
    hours: 0.6,
    rate: "workshop",
    needs: [],
    out: [
      tick("out", "Battery isolated, lower trim off; the knee airbag's plug is not touched.", {
        cautions: [caution.airbag, caution.battery],
      }),
    ],
    back: [tick("back", "Trim on; restraint lamp lights with the key and goes out.")],
  },
  {
    id: "battery-support",
    name: "Battery support on and off",
    hours: 0.2,
    rate: "workshop",
    needs: [],
    out: [
      tick("on", "50 A supply on, loads off, voltage steady above 13.2 V.", { cautions: [caution.flashing] }),
    ],
    back: [tick("off", "Supply off, battery leads tight, no code stored.")],
  },
  {
    id: "hub-strap-in",
    name: "Strap-in on the hub dyno",
    hours: 0.8,
    rate: "dyno",
    needs: [],
    out: [
      torque("adaptors", "Hub adaptor nuts, all four hubs.", 140, 7, { cautions: [caution.dynoRestraint] }),
      tick("restraints", "Restraints inspected and tight; fan in front, extraction on the tailpipe.", {
        cautions: [caution.dynoAir],
      }),
    ],
    back: [torque("wheels", "Wheels back on: wheel nuts, in a star, vehicle on the ground.", 140, 7)],
  },
  {
    id: "hub-strap-in-baseline",
    name: "Strap-in on the hub dyno, baseline visit",
    hours: 0.8,
    rate: "dyno",
    needs: [],
    out: [
      torque("adaptors", "Hub adaptor nuts, all four hubs.", 140, 7, { cautions: [caution.dynoRestraint] }),
      tick("restraints", "Restraints inspected and tight; fan in front, extraction on the tailpipe.", {
        cautions: [caution.dynoAir],
      }),
    ],
    back: [torque("wheels", "Wheels back on: wheel nuts, in a star, vehicle on the ground.", 140, 7)],
  },
  {
    id: "undertray-retorque",
    name: "Undertray off and on, re-torque visit",
    hours: 0.3,
    rate: "workshop",
    needs: [],
    out: [
      tick("out", "Undertray off; look for weeping joints before anything is wiped.", {
        cautions: [caution.hoist],
      }),
    ],
    back: [tick("back", "Undertray on, every clip home.")],
  },
  ...moreAccess,
];
