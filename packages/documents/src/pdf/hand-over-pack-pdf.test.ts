import { expect, test } from "vitest";
import { dynoCertificatePdf } from "./dyno-certificate-pdf";
import { handOverPackPdf } from "./hand-over-pack-pdf";
import { readPdf } from "./read-pdf";
import { sampleDyno, sampleHandOverPack } from "./sample-hand-over-pack";

const words = (pages: readonly string[]) => pages.join(" ").replace(/\s+/g, " ");

test("the hand-over pack holds work, serials, torques with their limits, dyno, certificates, cautions and follow-ups", async () => {
  const { pages, tagged, alternatives } = await readPdf(await handOverPackPdf(sampleHandOverPack));
  const text = words(pages);
  for (const said of [
    "Hand-over pack",
    "Road test of 41 km",
    "24-11873",
    "HP40-0662",
    "CR1-90417-BX",
    "Manifold bolts, final pass",
    "25.2 N·m",
    "23 to 27",
    "Tamsin Oyelaran",
    "8 December 2025, 14:10",
    "Promise kept: 366 kW",
    "261 kW at 5,900 rpm",
    "3 runs, 1.0 %",
    "1.0257",
    "SA-25-1180",
    "14 December 2025",
    "Weigh the combination",
    "Re-torque visit",
  ]) {
    expect(text).toContain(said);
  }
  expect(tagged).toBe(true);
  expect(alternatives[0]).toContain("Before: at most 261 kW");
  pages.forEach((page, index) => {
    expect(page).toContain(`page ${index + 1} of ${pages.length}`);
  });
});

test("a pack without dyno, parts or certificates leaves their headings out", async () => {
  const { dyno, ...rest } = sampleHandOverPack;
  expect(dyno).toBeDefined();
  const text = words(
    (await readPdf(await handOverPackPdf({ ...rest, parts: [], certificates: [], torques: [] }))).pages,
  );
  for (const heading of ["What it makes", "Parts fitted", "Certificates", "Torques and measurements"])
    expect(text).not.toContain(heading);
});

test("the dyno certificate states its conditions and that it certifies a measurement only", async () => {
  const { workshop, customer, vehicle, madeAt } = sampleHandOverPack;
  const certificate = {
    workshop,
    customer,
    vehicle,
    madeAt,
    jobNumber: "318",
    dyno: sampleDyno,
    operator: "Piet Marrun",
    issuedOn: "2025-12-12",
  };
  const bytes = await dynoCertificatePdf(certificate);
  const text = words((await readPdf(bytes)).pages);
  for (const said of [
    "Dyno certificate",
    "Piet Marrun",
    "Promised: 350–390 kW at the hubs",
    "99.2 kPa",
    "smoothed over 200 rpm",
    "licensed signatory",
  ]) {
    expect(text).toContain(said);
  }
  expect(Buffer.compare(bytes, await dynoCertificatePdf(certificate))).toBe(0);
});
