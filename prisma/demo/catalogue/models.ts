import type { VehicleModel } from "./types";

/*
 * Five invented vehicles. The figures are invented too, chosen so that they agree with one another; what a
 * capacity is measured at stands beside its first use.
 */

const ridgewold: VehicleModel = {
  id: "ridgewold-57",
  maker: "Kerrow",
  name: "Ridgewold 5.7",
  body: "4WD wagon",
  engine: "5.7 L V8, petrol, direct injection",
  displacementL: 5.7,
  cylinders: 8,
  compressionRatio: 11,
  injection: "direct",
  aspiration: "natural",
  fuelKind: "petrol",
  gearbox: "7-speed automatic",
  driven: "all",
  standardTyre: "285/65R18 116T",
  kerbMassKg: 2640,
  usualHubPowerKw: 261,
  usualHubTorqueNm: 499,
  facts: {
    /** What the standard cam-driven pump delivers at 6,000 rpm. */
    highPressureFuelKgPerH: 133,
    /** In-tank pump at 5 bar and 12.8 V. */
    lowPressureFuelLPerH: 275,
    /** Time the injectors may stay open at 6,000 rpm. */
    injectionWindowMs: 5,
    gearboxTorqueNm: 700,
    chargeTempLimitC: 70,
    beltDriveKw: 26,
    /** 110 A at hot idle, less 62 A of standing load with its 10 % reserve. */
    alternatorSpareA: 41.8,
    /** 710 kg of payload less five people of 75 kg; the axle's with the same five (model-chassis.ts). */
    payloadSpareKg: 335,
    frontAxleSpareKg: 190,
    /** Four tyres and the spare, without their rims, and what of them the front axle carries. */
    tyreSetKg: 105,
    tyreSetFrontKg: 36,
    /** Trailer held at road speed on a long grade at 43 °C. */
    towOnGradeKg: 2500,
    bonnetClearanceMm: 18,
    directInjection: 1,
    hubAdaptors: 4,
  },
};

const ridgewoldLift: VehicleModel = {
  ...ridgewold,
  id: "ridgewold-57-lift",
  name: "Ridgewold 5.7 Lift",
  body: "4WD wagon, raised 50 mm on 33-inch tyres",
  standardTyre: "33x12.50R18LT 118Q",
  kerbMassKg: 2703,
  facts: {
    ...ridgewold.facts,
    payloadSpareKg: 272,
    frontAxleSpareKg: 166,
    tyreSetKg: 150,
    tyreSetFrontKg: 51,
    liftMm: 50,
    liftKg: 18,
    liftFrontKg: 9,
    tallTyres: 1,
  },
};

const vale: VehicleModel = {
  id: "vale-30td",
  maker: "Wendra",
  name: "Vale 3.0 TD",
  body: "dual-cab ute",
  engine: "3.0 L four-cylinder turbo-diesel",
  displacementL: 3,
  cylinders: 4,
  compressionRatio: 16,
  injection: "direct",
  aspiration: "turbo",
  fuelKind: "diesel",
  gearbox: "6-speed automatic",
  driven: "all",
  standardTyre: "265/65R17 112S",
  kerbMassKg: 2120,
  usualHubPowerKw: 112,
  usualHubTorqueNm: 412,
  facts: {
    gearboxTorqueNm: 600,
    alternatorSpareA: 51,
    payloadSpareKg: 540,
    frontAxleSpareKg: 210,
    towOnGradeKg: 2300,
    directInjection: 1,
    hubAdaptors: 4,
    dieselFilterFitted: 1,
    exhaustRecirculationFitted: 1,
  },
};

const orrismere: VehicleModel = {
  id: "orrismere-gt44",
  maker: "Orrismere",
  name: "GT 4.4",
  body: "sedan",
  engine: "4.4 L V8, petrol, port injection",
  displacementL: 4.4,
  cylinders: 8,
  compressionRatio: 10.5,
  injection: "port",
  aspiration: "natural",
  fuelKind: "petrol",
  gearbox: "6-speed manual",
  driven: "rear",
  standardTyre: "255/40R18 95Y",
  kerbMassKg: 1715,
  usualHubPowerKw: 218,
  usualHubTorqueNm: 402,
  facts: {
    lowPressureFuelLPerH: 240,
    injectionWindowMs: 16,
    /** Static rating of the standard clutch. */
    clutchStaticNm: 660,
    gearboxTorqueNm: 640,
    chargeTempLimitC: 70,
    beltDriveKw: 30,
    alternatorSpareA: 38,
    payloadSpareKg: 160,
    frontAxleSpareKg: 140,
    bonnetClearanceMm: 14,
    hubAdaptors: 2,
    provenTwoWheelMode: 1,
  },
};

const bramlet: VehicleModel = {
  id: "bramlet-trail-20",
  maker: "Bramlet",
  name: "Trail 2.0",
  body: "small 4WD",
  engine: "2.0 L four-cylinder, petrol, port injection",
  displacementL: 2,
  cylinders: 4,
  compressionRatio: 10.2,
  injection: "port",
  aspiration: "natural",
  fuelKind: "petrol",
  gearbox: "5-speed manual",
  driven: "all",
  standardTyre: "215/75R15 100S",
  kerbMassKg: 1390,
  usualHubPowerKw: 76,
  usualHubTorqueNm: 158,
  facts: {
    gearboxTorqueNm: 240,
    alternatorSpareA: 24,
    payloadSpareKg: 70,
    frontAxleSpareKg: 90,
    tyreSetKg: 58,
    tyreSetFrontKg: 20,
    towOnGradeKg: 1000,
    hubAdaptors: 4,
  },
};

export const models: readonly VehicleModel[] = [ridgewold, ridgewoldLift, vale, orrismere, bramlet];
