/**
 * Where a rule of law comes from. Nothing here was read in the instrument itself unless it says so, so each ends
 * with whom to ask. Whatever is not law is common practice, no source.
 */
const confirm = "Confirm with the authority or a licensed signatory.";

export const source = {
  rideHeight: `VSB 14 section LS, as VicRoads VSI 8 quotes it: more than 50 mm or a third of the travel needs a certificate. ${confirm}`,
  tyreDiameter: `South Australian government page on vehicle modification, as quoted in 2018: tyre diameter within 15 mm of the placard's, else form MR620 and an engineer's report. ${confirm}`,
  tyreLoad: `State vehicle standards rules, South Australian page as quoted in 2018: load rating not below the placard's lowest. ${confirm}`,
  tyreSpeed: `Western Australian Road Traffic (Vehicle Standards) Rules, rule 46(3); the same numbers in South Australia. ${confirm}`,
  track: `South Australian vehicle standards regulations, number 25 of 1999, remade since: track more than 26 mm wider needs approval. ${confirm}`,
  speedometer: `ADR 18/03, as UN R39 paragraph 5.3: never below the true speed, at most a tenth and 4 km/h above. ${confirm}`,
  trailerBrakes: `ADR 38 as state pages quote it; Tasmanian Vehicle Standards Regulations 2024, regulation 114. ${confirm}`,
  combination: `Maker's plate. The federal department assesses no change of a light vehicle's combination mass: a state matter. ${confirm}`,
  grossMass: `VSB 14, code LS11 for a gross-mass upgrade in service, from a secondary list. ${confirm}`,
  brakes: `VSB 14 section LG, code LG2 for a changed brake system, from a secondary list. ${confirm}`,
  fuelTank: `VSB 14 section LM, code LM1 for a changed fuel tank, from a secondary list. ${confirm}`,
  engine: `VSB 14 section LA, checklist read as a certifier's copy; code LA3 from a secondary list. ${confirm}`,
  engineInSa: `South Australian government page on vehicle modification, read. ${confirm}`,
  transmission: `VSB 14 section LB, code LB1 for a changed transmission, from a secondary list. ${confirm}`,
  noise: `ADR 83/00 sets the test; the allowance in service is each state's. ${confirm}`,
  generalSafety: `ADR 42/04, contents read: exhaust outlets, wiring, wheel guards, protrusions. ${confirm}`,
  emissions: `ADR 79 and the state's in-service rules, from memory. ${confirm}`,
  frontal: `Restraint and lamp rules (ADR 13, 69, 72), from memory. ${confirm}`,
  modifiedInUae: `UAE Cabinet Decision 45, in force June 2017, known from press reports only. ${confirm}`,
} as const;
