import type { QuoteDocument } from "./quote-document";

const band = [
  [2000, 112, 126],
  [2500, 146, 163],
  [3000, 180, 200],
  [3500, 215, 239],
  [4000, 250, 278],
  [4500, 284, 316],
  [5000, 314, 349],
  [5500, 339, 377],
  [6000, 350, 390],
] as const;
const baseline = [
  [2000, 85],
  [2500, 115],
  [3000, 145],
  [3500, 176],
  [4000, 207],
  [4500, 234],
  [5000, 254],
  [5500, 261],
  [6000, 257],
] as const;

/** An invented quote of the invented workshop, for the tests of the letter. */
export const sampleQuote: QuoteDocument = {
  workshop: {
    name: "Saltbush Dyno & Driveline",
    taxNumber: "ABN 47 555 222 000",
    address: ["14 Quandong Road", "Wirrabilla SA 5999"],
    phone: "(08) 5550 1234",
    email: "desk@saltbush.example",
  },
  customer: {
    name: "Łucja Okafor-Nguyễn",
    address: ["3 Samphire Lane", "Wirrabilla SA 5999"],
    phone: "0491 570 156",
    email: "lucja@okafor.example",
  },
  vehicle: {
    description: "Kerrow Ridgewold 5.7, 4WD wagon",
    plate: "S123 BXA",
    vin: "7ZZKR57W1R0000421",
    odometerKm: 24_310,
    fuel: "petrol 98",
  },
  number: "1042",
  version: 2,
  issuedOn: "2025-11-25",
  issuedAt: "2025-11-25T10:42:00+10:30",
  validUntil: "2025-12-09",
  currency: "AUD",
  taxName: "GST",
  asked:
    "Tow a 3.0 t boat to the Gulf without holding everybody up, more pull in the middle, and ready by 18 December.",
  proposed:
    "Long Grade 2.4: a 2.4 L blower with its charge cooler, the fuel pump to feed it, engine and gearbox calibrations, calibrated on our hub dyno and proven there before you pay the balance.",
  promise: {
    at: "hubs",
    lowKw: 350,
    highKw: 390,
    referenceCondition: "petrol 98, 25 °C, sea level, corrected to SAE J1349",
    remedy:
      "If three repeatable runs do not reach the lower figure we work on at our cost, then reduce the price, and in the end take the parts off and refund them.",
    plot: {
      baseline: baseline.map(([speedRpm, kw]) => ({ speedRpm, kw })),
      band: band.map(([speedRpm, lowKw, highKw]) => ({ speedRpm, lowKw, highKw })),
    },
  },
  sections: [
    {
      heading: "Air",
      lines: [
        {
          description: "Blower kit 2.4 L/rev, 92 mm pulley",
          detail: "Pellavane PV-24-92 · not returnable",
          quantity: "1",
          grossMinor: 1_639_000,
        },
        {
          description: "Charge cooler kit, twin fan",
          detail: "Quoinard QN-CC2",
          quantity: "1",
          grossMinor: 291_500,
        },
        { description: "10-rib belt and tensioner", quantity: "1", grossMinor: 41_800 },
        { description: "Crank-pulley pin kit with new crank bolt", quantity: "1", grossMinor: 46_200 },
      ],
    },
    {
      heading: "Fuel",
      lines: [
        {
          description: "High-pressure fuel pump upgrade",
          detail: "Vellis VL-HP40 · without it the pump is short by 9 % at 6,000 rpm",
          quantity: "1",
          grossMinor: 213_400,
        },
        { description: "High-pressure pipes and injector seals", quantity: "1", grossMinor: 37_400 },
        { description: "Engine oil and filter", quantity: "1", grossMinor: 15_950 },
      ],
    },
    {
      heading: "Ignition and calibration",
      lines: [
        { description: "Spark plugs two steps colder, set of 8", quantity: "1", grossMinor: 28_600 },
        { description: "Boosted engine calibration", quantity: "1", grossMinor: 132_000 },
        {
          description: "Licence credit, engine controller",
          detail: "Locked to your VIN; neither returnable nor transferable",
          quantity: "1",
          grossMinor: 49_500,
        },
        { description: "7-speed gearbox calibration", quantity: "1", grossMinor: 75_900 },
      ],
    },
    {
      heading: "Work and fees",
      lines: [
        {
          description: "Workshop labour",
          detail: "7.0 h of shared access work counted once",
          quantity: "39.2 h",
          grossMinor: 711_480,
        },
        { description: "Dyno with operator", quantity: "7.6 h", grossMinor: 217_360 },
        { description: "Coolant, sealants, waste and freight", quantity: "1", grossMinor: 31_900 },
        { description: "Dyno fuel, 25 L of 98", quantity: "1", grossMinor: 7_700 },
        {
          description: "Engineering certificate",
          detail: "By a licensed signatory",
          quantity: "1",
          grossMinor: 104_500,
        },
      ],
    },
  ],
  netMinor: 3_312_900,
  taxMinor: 331_290,
  grossMinor: 3_644_190,
  deposit: {
    grossMinor: 1_822_095,
    covers:
      "It covers the parts that cannot be returned. We order nothing before it has arrived and the pre-build inspection has passed.",
  },
  earliest:
    "In on Thursday 4 December, out on Monday 15 December, if you accept by 27 November and the parts come as promised to us.",
  assumptions: [
    "The pre-build inspection passes and the baseline lies within 3 % of a healthy standard vehicle.",
    "You buy petrol 98 and the calibration is set on it.",
    "No part fitted by others lies in the path of air, fuel, ignition or exhaust.",
  ],
  exclusions: [
    "Repair of faults found by the inspection; each is quoted to you first.",
    "Seized or broken fasteners beyond one hour.",
    "Removal of any emission control: we do not do it.",
  ],
  cautions: [
    "Not for road use until the certificate is attached and the authority's conditions are met.",
    "A dealer software update overwrites the calibration: tell them first, and us after.",
    "On a 43 °C day expect about a tenth less power and stay off full load while towing uphill.",
    "Tell your insurer before you drive it.",
  ],
  acceptance: ["Open the link below and accept this version by your name, or reply to our e-mail."],
  acceptanceLink: "https://saltbush.example/q/1042",
};
