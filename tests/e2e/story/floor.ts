import { expect, type Page } from "@playwright/test";
import { demoPassword } from "../../../prisma/demo/demo-people";

/** What the floor needs of the job; everything else it reads off the card. */
export type FloorStory = {
  /** Human number of the job, as in "Job 1616". */
  jobNumber?: string;
  odometerKm?: string;
  /** E-mail of the second person who signs hold points. */
  signer?: string;
};

/** One grey pixel: enough for its bytes to say what it is (PNG, ISO/IEC 15948). */
export const photoFile = {
  name: "camera.png",
  mimeType: "image/png",
  buffer: Buffer.from(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABc3UBGAAAAABJRU5ErkJggg==",
    "base64",
  ),
};

/** Opens the card of the story's job, by way of the list of jobs. */
export async function openCard(technician: Page, story: FloorStory): Promise<void> {
  await technician.goto(`/jobs?q=${story.jobNumber}`);
  await technician
    .getByRole("link", { name: `Job ${story.jobNumber}`, exact: true })
    .first()
    .click();
  await technician.getByRole("link", { name: "Job card", exact: true }).click();
  await technician.getByRole("link", { name: "Work on the card" }).click();
  await expect(
    technician.getByRole("heading", { level: 1, name: new RegExp(`job ${story.jobNumber}$`) }),
  ).toBeVisible();
}

/** Says what must be said, walks round with the camera, reads, counts, and takes the vehicle in. */
export async function technicianChecksIn(technician: Page, story: FloorStory): Promise<void> {
  await openCard(technician, story);
  await technician.getByRole("link", { name: "Check in" }).click();
  await fillCheckIn(technician, story.odometerKm ?? "24410");
  await technician.getByRole("button", { name: "Take the vehicle in" }).click();
  await expect(technician.getByRole("heading", { name: "Taken in" })).toBeVisible();
  await technician.getByRole("link", { name: "Open the job card" }).click();
  await expect(technician.getByRole("form", { name: "Enter this step" })).toBeVisible();
}

export async function fillCheckIn(technician: Page, odometerKm: string): Promise<void> {
  const form = technician.getByRole("form", { name: "Check in" });
  await expect(form.getByRole("checkbox").first()).toBeAttached();
  for (const box of await form.getByRole("checkbox").all()) {
    await box.press("Space");
    await expect(box).toBeChecked();
  }
  await form.getByLabel("Condition").fill("Stone chips on the bonnet; scratch on the left rear door.");
  await form.getByLabel("Photos").setInputFiles(photoFile);
  await expect(form.getByText("1 at the workshop")).toBeVisible();
  await form.getByLabel("Odometer").fill(odometerKm);
  await form.getByLabel("Keys").fill("2");
  const grade = form.getByRole("radio", { name: "98" });
  if ((await grade.count()) > 0) {
    await grade.press("Space");
    await expect(grade).toBeChecked();
    await form.getByLabel("Ethanol content").fill("4");
  }
}

/** Enters step after step, each as it should be, until a hold point or the end of the card. */
export async function technicianWorksTheCard(technician: Page): Promise<"hold" | "end"> {
  for (let presses = 0; presses < 400; presses += 1) {
    if (await technician.getByText("Every step on this card is entered.").isVisible()) return "end";
    if (await technician.getByRole("form", { name: "Sign the hold point" }).isVisible()) return "hold";
    const place = (await technician.getByText(/^Step \d+ of \d+/).textContent()) ?? "";
    await enterStep(technician);
    await expect(async () => {
      const ended = technician.getByText("Every step on this card is entered.");
      expect(
        (await ended.isVisible()) || !(await technician.getByText(place, { exact: true }).isVisible()),
      ).toBe(true);
    }).toPass({ intervals: [50, 100, 250], timeout: 15_000 });
  }
  throw new Error("the card does not end");
}

/** Enters the step in hand with a figure on its target, or on its lower limit. */
export async function enterStep(technician: Page): Promise<void> {
  const form = technician.getByRole("form", { name: "Enter this step" });
  await expect(form).toBeVisible();
  const figure = form.getByLabel(/^(Torque reached|Figure read)$/);
  if (await figure.isVisible()) await figure.fill(await allowedFigure(technician));
  const serial = form.getByLabel("Serial number");
  if (await serial.isVisible()) await serial.fill("SN-204711");
  const photo = form.getByLabel("Photo", { exact: true });
  if (await photo.isVisible()) {
    await photo.setInputFiles(photoFile);
    await form.getByRole("button", { name: "Save the photo" }).click();
    return;
  }
  await form.getByRole("button", { name: "Done", exact: true }).click();
}

/** The limits stand on the card in words, the target first: "25 N·m, 23 to 27 N·m", "0 counts". */
async function allowedFigure(technician: Page): Promise<string> {
  const words = await technician.getByRole("note", { name: "Limits" }).textContent();
  return (/-?[\d.,]+/.exec(words ?? "")?.[0] ?? "0").replaceAll(",", "");
}

/** The second person signs on the technician's own device. */
export async function secondPersonSigns(technician: Page, story: FloorStory): Promise<void> {
  const form = technician.getByRole("form", { name: "Sign the hold point" });
  await form.getByLabel("E-mail of who signs").fill(story.signer ?? "joss@saltbush.example");
  await form.getByLabel("Their password").fill(demoPassword);
  await form.getByRole("button", { name: "Sign", exact: true }).click();
  // The words of an earlier signature may still stand beside these.
  await expect(technician.getByText(/^Signed by /).last()).toBeVisible();
  await expect(form).toBeHidden();
}

/** The whole card from where it stands to its end, every hold point signed by the second person. */
export async function technicianFinishesTheCard(technician: Page, story: FloorStory): Promise<void> {
  while ((await technicianWorksTheCard(technician)) === "hold") await secondPersonSigns(technician, story);
}
