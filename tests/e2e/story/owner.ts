import { expect, type Page } from "@playwright/test";

/** What the owner needs of the story so far. */
export type OwnerStory = {
  jobNumber?: string;
};

/** The owner, after the hand-over: finds the job under its package, enters the invoice, reads quoted and earned. */
export async function ownerReadsTheMargin(owner: Page, story: OwnerStory): Promise<void> {
  await owner.goto("/owner");
  await expect(owner.getByRole("heading", { level: 1, name: "Margins" })).toBeVisible();
  await owner.getByRole("region", { name: "Packages" }).getByRole("link", { name: "Long Grade 2.4" }).click();
  await expect(owner.getByRole("heading", { level: 1, name: "Long Grade 2.4" })).toBeVisible();
  await owner
    .getByRole("region", { name: "Jobs, what earned least first" })
    .getByRole("link", { name: `Job ${story.jobNumber}`, exact: true })
    .click();
  await expect(
    owner.getByRole("heading", { level: 1, name: `Job ${story.jobNumber}: margin` }),
  ).toBeVisible();
  await ownerRecordsTheParts(owner);
  const waterfall = owner.getByRole("table", { name: /A step leads to the entries behind it/ });
  await expect(waterfall.getByRole("row", { name: /^Quoted margin, \d/ })).toBeVisible();
  await expect(waterfall.getByRole("row", { name: /^Earned margin, / })).toBeVisible();
}

/** On the page of a job's margin: the supplier's invoice for its parts. */
export async function ownerRecordsTheParts(owner: Page): Promise<void> {
  const form = owner.getByRole("form", { name: "Record a cost" });
  await form.getByRole("button", { name: /For \(required\)$/ }).click();
  await owner.getByRole("option", { name: "Parts and materials" }).click();
  await form.getByLabel("What it is").fill("Pellavane and Vellis, invoices 8841 and 2207");
  await form.getByLabel("Amount without tax").fill("17,940.50");
  await form.getByRole("button", { name: "Record the cost" }).click();
  const recorded = owner.getByRole("row", { name: /invoices 8841 and 2207/ });
  await expect(recorded).toContainText("$17,940.50");
}
