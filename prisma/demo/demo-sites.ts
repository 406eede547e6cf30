import { hourRates } from "./catalogue/hour-rates";
import type { DemoSite } from "./demo-workshop";

/** The business number is the published example of a valid one; the telephone numbers are set aside for fiction. */
export const saltbush: DemoSite = {
  name: "Saltbush Dyno & Driveline",
  siteName: "Saltbush Dyno & Driveline",
  timeZone: "Australia/Adelaide",
  currency: "AUD",
  jurisdiction: "AU",
  taxNumber: "47 555 222 000",
  address: "14 Coopers Wheel Lane, Saltbush Flat SA 5999",
  phone: "08 5550 0142",
  email: "desk@saltbush.example",
  designAmbientC: 43,
  altitudeM: 60,
  labourRateMinorPerHour: hourRates.workshop.priceCents,
  labourCostMinorPerHour: hourRates.workshop.costCents,
  dynoRateMinorPerHour: hourRates.dyno.priceCents,
  dynoCostMinorPerHour: hourRates.dyno.costCents,
  quoteValidDays: 30,
  depositSharePct: 30,
};

/** A second workshop, there so that one can be seen not to see the other. */
export const gulfBoost: DemoSite = {
  name: "Gulf Boost Works",
  siteName: "Gulf Boost Works",
  timeZone: "Asia/Dubai",
  currency: "AED",
  jurisdiction: "AE",
  // Fifteen digits, all but the first nought: in form a tax number, and nobody's.
  taxNumber: "100000000000000",
  address: "Unit 7, Lantern Dhow Yard",
  phone: "+971 4 555 0142",
  email: "desk@gulfboost.example",
  designAmbientC: 48,
  altitudeM: 5,
  labourRateMinorPerHour: 380_00,
  labourCostMinorPerHour: 140_00,
  dynoRateMinorPerHour: 650_00,
  dynoCostMinorPerHour: 230_00,
  quoteValidDays: 30,
  depositSharePct: 30,
};
