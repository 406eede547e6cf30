import { expect, type Page } from "@playwright/test";

/** What the stages of the story hand along. */
export type QuoteStory = {
  /** The page of the quote, once it is drafted. */
  quoteUrl?: string;
  quoteNumber?: string;
  /** The link that was sent to the customer. */
  customerLink?: string;
  jobNumber?: string;
  customerName: string;
};

/** The desk, on the page of a draft: reads it, gives a little off, adds a line, and issues it. */
export async function deskIssuesTheQuote(desk: Page, story: QuoteStory): Promise<void> {
  const heading = desk.getByRole("heading", { level: 1, name: /^Quote \d+, version \d+$/ });
  await expect(heading).toBeVisible();
  story.quoteNumber = /Quote (\d+)/.exec((await heading.textContent()) ?? "")?.[1] ?? "";
  story.quoteUrl = desk.url();

  await desk.getByRole("button", { name: "Add a line" }).click();
  const adding = desk.getByRole("dialog", { name: "Add a line" });
  await adding.getByLabel("Description").fill("Loan car while the vehicle is apart");
  await adding.getByLabel("Quantity").fill("5");
  await adding.getByLabel("Price of one, without GST").fill("38.50");
  await adding.getByRole("button", { name: "Add the line" }).click();
  await expect(adding).toBeHidden();
  const lines = desk.getByRole("region", { name: "Lines of the quote" });
  await expect(
    lines.getByRole("row", { name: /Loan car while the vehicle is apart 5 \$211\.75/ }),
  ).toBeVisible();

  await desk.getByRole("button", { name: /^Issue version \d+$/ }).click();
  await expect(desk.getByText(/The customer can accept it until the end of/)).toBeVisible();
}

/** The desk makes the customer's link, to be copied into a message. */
export async function deskMakesTheLink(desk: Page, story: QuoteStory): Promise<void> {
  await desk.getByRole("button", { name: /^Make (the customer's|another) link$/ }).click();
  const field = desk.getByLabel("The customer's link", { exact: true });
  await expect(field).toHaveValue(/\/q\/[A-Za-z0-9_-]{43}$/);
  story.customerLink = await field.inputValue();
}

/** An issued version never changes: a second is issued in its place, and the first one's link says so. */
export async function deskSupersedesTheFirstVersion(
  desk: Page,
  customer: Page,
  story: QuoteStory,
): Promise<void> {
  const firstLink = story.customerLink ?? "";
  await customer.goto(firstLink);
  await expect(customer.getByRole("button", { name: "Accept this quote" })).toBeVisible();
  await desk.goto(story.quoteUrl ?? "");
  await desk.getByRole("button", { name: "Make version 2" }).click();
  await expect(desk.getByRole("heading", { level: 1, name: /version 2$/ })).toBeVisible();
  await desk.getByRole("button", { name: "Issue version 2" }).click();
  await expect(desk.getByText(/The customer can accept it until the end of/)).toBeVisible();
  await customer.goto(firstLink);
  await expect(customer.getByText("This version was replaced by version 2.")).toBeVisible();
  await deskMakesTheLink(desk, story);
}

/** The customer, without an account: opens the link, reads, and accepts by name. */
export async function customerAcceptsTheQuote(customer: Page, story: QuoteStory): Promise<void> {
  await customer.goto(story.customerLink ?? "");
  await expect(customer.getByRole("heading", { level: 1, name: /^Quote \d+, version \d+$/ })).toBeVisible();
  await expect(customer.getByRole("heading", { name: "What to be careful about" })).toBeVisible();
  const agreed = customer.getByRole("checkbox", { name: /I have read quote/ });
  await expect(agreed).not.toBeChecked();
  await agreed.press("Space");
  await expect(agreed).toBeChecked();
  await customer.getByLabel("Your full name").fill(story.customerName);
  await customer.getByRole("button", { name: "Accept this quote" }).click();
  await expect(customer.getByText(`${story.customerName} accepted this quote on`)).toBeVisible();
  await expect(customer.getByRole("heading", { name: "What happens next" })).toBeVisible();
  const job = await customer.getByText(/It is job \d+ with us/).textContent();
  story.jobNumber = /\d+/.exec(job ?? "")?.[0] ?? "";
}

/** Whoever may, on the quote's page: records the deposit in full. */
export async function deskRecordsTheDeposit(desk: Page, story: QuoteStory): Promise<void> {
  await desk.goto(story.quoteUrl ?? "");
  const hint = (await desk.getByText(/^To complete it: /).textContent()) ?? "";
  const form = desk.getByRole("form", { name: "Record the deposit" });
  await form.getByLabel("Amount received").fill(hint.replace(/[^\d.,]/g, ""));
  await form.getByLabel("Reference").fill(`Q${story.quoteNumber}`);
  await form.getByRole("button", { name: "Record the deposit" }).click();
  await expect(desk.getByText(/, the deposit is here in full/)).toBeVisible();
}
