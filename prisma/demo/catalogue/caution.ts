/** The usual cautions, in words, each said before the step that needs it. Local codes and the maker's instruction come first. */
export const caution = {
  hoist:
    "Hoist inspection in date, vehicle mass within its rating, arms on the maker's points, locks set before anyone goes under.",
  fuelVapour:
    "Fuel vapour burns: engine cold, ignition off and isolated, no flame or spark, extinguisher at hand, ventilate, catch and cover what drips.",
  fuelPressure:
    "High-pressure fuel cuts skin: run the maker's pressure relief and read zero before a fitting is touched. Eye protection and gloves.",
  hotCoolant: "Hot coolant scalds: open the cap only below 40 °C.",
  battery: "Negative lead off first and back on last; no metal across the terminals.",
  airbag:
    "Impact sensors sit behind the bar: ignition off, battery isolated, wait the maker's time before a connector is touched.",
  refrigerant: "Condenser moves with its lines closed; opening the refrigerant circuit is licensed work.",
  fan: "Electric fans start without warning: unplug them before hands go in.",
  rotating:
    "Long hair, sleeves and lanyards away from the belts; nobody in line with them while the engine turns.",
  dynoRestraint:
    "Hubs seated, restraints front and rear inspected before every run, nobody in the cell but the operator, doors closed.",
  dynoAir:
    "Exhaust extraction on, carbon monoxide alarm working, ear and eye protection, extinguisher at hand.",
  dynoAbort:
    "Lift at once on a lean mixture, knock, rail droop, charge above 70 °C, or gearbox oil above 120 °C.",
  flashing:
    "Supply held above 13.2 V for the whole write; an interrupted write can leave the vehicle immobile.",
  roadTest:
    "Licensed and insured driver, trade plates or permit where needed, speed limits kept; no full-load pull on a public road.",
  emissions: "No emission control is removed, blocked or coded out.",
  oneUse: "The old one does not go back, whatever it looks like.",
  springs:
    "A compressed spring stores enough to kill: the right cage, hooks seated, nobody in line, never an impact driver.",
  gearboxWeight:
    "A gearbox weighs more than two people can catch: transmission jack, strap on, engine supported.",
  brakes:
    "Brake fluid strips paint and skin. Pump the pedal firm before the vehicle moves; first stops at walking pace.",
  brakeWork:
    "Brakes are work for a licensed repairer where the local code says so; nothing is released on a soft pedal.",
  exhaustHot: "Exhaust parts stay hot for an hour: work on them cold, eyes covered for rust that falls.",
  tankWork:
    "Tank emptied and vented outdoors or under extraction, earthed, no spark within 6 m, lamp rated for vapour.",
  trailerBrakes: "First stop at walking pace, in a yard, with nobody near the trailer.",
} as const;
