import type { Page } from "@playwright/test";
import { checkAccessibility, expect, signInAs, test } from "./fixtures";
import {
  customerAcceptsTheQuote,
  deskIssuesTheQuote,
  deskMakesTheLink,
  deskRecordsTheDeposit,
  type QuoteStory,
} from "./story/quotes";

const phone = { width: 390, height: 844 };

async function openQuote(page: Page, search: string): Promise<void> {
  await page.goto(`/quotes?q=${encodeURIComponent(search)}`);
  await page.getByRole("region", { name: "Quotes" }).getByRole("link").first().click();
  await expect(page.getByRole("heading", { level: 1, name: /^Quote \d+/ })).toBeVisible();
}

test("a quote is finished, issued, accepted on a phone, and its deposit recorded", async ({
  page,
  openAs,
}) => {
  // Four pages, a paper and five looks for accessibility: more than one test's usual time on a busy machine.
  test.slow();
  await signInAs(page, "desk");
  const story: QuoteStory = { customerName: "Elin Strand" };
  await openQuote(page, "E. Strand");
  await expect(page.getByText(/^Weakest link: .+/)).toBeVisible();
  await checkAccessibility(page);
  await deskIssuesTheQuote(page, story);
  await deskMakesTheLink(page, story);
  await checkAccessibility(page);

  const customer = await openAs("nobody");
  await customer.setViewportSize(phone);
  await customer.goto(story.customerLink ?? "");
  await expect(customer.getByRole("button", { name: "Accept this quote" })).toBeVisible();
  await checkAccessibility(customer);
  const paper = await customer.request.get(`${story.customerLink}/pdf`);
  expect(paper.headers()["content-type"]).toBe("application/pdf");
  expect((await paper.body()).subarray(0, 5).toString()).toBe("%PDF-");
  await customerAcceptsTheQuote(customer, story);
  await checkAccessibility(customer);

  await deskRecordsTheDeposit(page, story);
  await expect(page.getByRole("link", { name: `Job ${story.jobNumber}` })).toBeVisible();
  await checkAccessibility(page);
});

test("a second version supersedes the first, whose link then says so and by which", async ({
  page,
  openAs,
}) => {
  await signInAs(page, "desk");
  await openQuote(page, "R. Tamsin");
  const story: QuoteStory = { customerName: "Rae Tamsin" };
  await deskMakesTheLink(page, story);

  await page.getByRole("button", { name: "Make version 2" }).click();
  await expect(page.getByRole("heading", { level: 1, name: /version 2$/ })).toBeVisible();
  await page.getByRole("button", { name: "Change Trailer brake controller" }).click();
  const change = page.getByRole("dialog", { name: "Change a line" });
  await change.getByLabel("Discount").fill("4");
  await change.getByRole("button", { name: "Save the line" }).click();
  await expect(change).toBeHidden();
  await expect(page.getByRole("row", { name: /Trailer brake controller: discount 0 % → 4 %/ })).toBeVisible();
  await page.getByRole("button", { name: "Issue version 2" }).click();
  await expect(page.getByText(/The customer can accept it until the end of/)).toBeVisible();
  await checkAccessibility(page);

  const customer = await openAs("nobody");
  await customer.setViewportSize(phone);
  await customer.goto(story.customerLink ?? "");
  await expect(customer.getByText("This version was replaced by version 2.")).toBeVisible();
  await expect(customer.getByRole("button", { name: "Accept this quote" })).toHaveCount(0);
  await checkAccessibility(customer);
});

test("two tabs on one draft: the second is told, sees the newer values, and loses nothing", async ({
  page,
  openAs,
}) => {
  await signInAs(page, "desk");
  await openQuote(page, "R. Tamsin");
  await page.getByRole("button", { name: /^Make version \d+$/ }).click();
  await expect(page.getByText("Nothing is open.")).toBeVisible();
  const other = await openAs("manager");
  await other.goto(page.url());

  const open = async (tab: Page) => {
    await tab.getByRole("button", { name: "Change 12-pin trailer socket" }).click();
    return tab.getByRole("dialog", { name: "Change a line" });
  };
  const [mine, theirs] = [await open(page), await open(other)];
  await theirs.getByLabel("Quantity").fill("2");
  await theirs.getByRole("button", { name: "Save the line" }).click();
  await expect(theirs).toBeHidden();

  await mine.getByLabel("Description").fill("12-pin socket, sealed");
  await mine.getByRole("button", { name: "Save the line" }).click();
  await expect(mine.getByText("Marek Oduya changed this version while you had it open.")).toBeVisible();
  await expect(mine.getByText(/Quantity now: 2 each/)).toBeVisible();
  await expect(mine.getByLabel("Description")).toHaveValue("12-pin socket, sealed");
  // Having seen it, she may save again.
  await mine.getByRole("button", { name: "Save the line" }).click();
  await expect(mine).toBeHidden();
  await expect(page.getByRole("row", { name: /12-pin socket, sealed/ }).first()).toBeVisible();
  await page.getByRole("button", { name: /^Discard draft version \d+$/ }).click();
  await expect(page.getByText("The customer can accept it until")).toBeVisible();
});

test("what cannot be is refused in words, and what was typed stays", async ({ page }) => {
  await signInAs(page, "desk");
  await openQuote(page, "A. Okafor");
  await page.getByRole("button", { name: /^Make version \d+$/ }).click();
  await page.getByRole("button", { name: "Change Charge cooler kit, twin fan" }).click();
  const change = page.getByRole("dialog", { name: "Change a line" });
  const save = () => change.getByRole("button", { name: "Save the line" }).click();
  await change.getByLabel("Quantity").fill("-1");
  await save();
  await expect(change.getByRole("alert")).toContainText("A quantity is more than nothing.");
  await expect(change.getByLabel("Quantity")).toHaveValue("-1");
  await change.getByLabel("Quantity").fill("1");
  await change.getByLabel("Discount").fill("40");
  await save();
  await expect(change.getByText("You may give up to 5 % off. Ask the owner for more")).toBeVisible();
  await expect(change.getByLabel("Discount")).toHaveValue("40");
  await checkAccessibility(page);
  await change.getByRole("button", { name: "Close" }).click();
  await page.getByRole("button", { name: /^Discard draft version \d+$/ }).click();
  await expect(page.getByRole("heading", { level: 1, name: /version 2$/ })).toBeVisible();
});

test("a link that was cut short or made up opens a calm page that says what to do", async ({
  page,
  expectConsoleError,
}) => {
  expectConsoleError(/404/);
  for (const token of ["abc", "A".repeat(43)]) {
    const answer = await page.goto(`/q/${token}`);
    expect(answer?.status()).toBe(404);
    await expect(page.getByRole("heading", { name: "This link does not open a quote" })).toBeVisible();
    await expect(page.getByText("Please ask the workshop")).toBeVisible();
  }
  await checkAccessibility(page);
  expect((await page.request.get(`/q/${"A".repeat(43)}/pdf`)).status()).toBe(404);
});

test("another workshop finds none of these quotes, whatever address it tries", async ({ page, openAs }) => {
  await signInAs(page, "desk");
  await openQuote(page, "A. Okafor");
  const stranger = await openAs("lena@gulfboost.example");
  await stranger.goto(page.url());
  await expect(stranger.getByRole("heading", { name: "There is nothing at this address" })).toBeVisible();
  await stranger.goto("/quotes?q=Okafor");
  await expect(stranger.getByText("No quote is like that.")).toBeVisible();
  await checkAccessibility(stranger);
});

test("the list is searched and kept to a status, and shows the margin to nobody", async ({ page }) => {
  await signInAs(page, "desk");
  await page.goto("/quotes");
  await page.getByRole("searchbox", { name: "Find a quote" }).fill("4kt7vn");
  await page.getByRole("button", { name: "Find", exact: true }).click();
  await expect(page.getByRole("cell", { name: "R. Tamsin" })).toBeVisible();
  await page
    .getByRole("navigation", { name: "Quotes by status" })
    .getByRole("link", { name: "lapsed" })
    .click();
  await expect(page.getByText("No quote is like that.")).toBeVisible();
  await checkAccessibility(page);
  await openQuote(page, "A. Okafor");
  await expect(page.getByText("Margin as quoted")).toHaveCount(0);
});

test("the owner records a refund, never more than is here, and it stands beside the payments", async ({
  page,
  openAs,
}) => {
  await signInAs(page, "desk");
  await openQuote(page, "Sandell");
  await expect(page.getByRole("button", { name: "Record a refund" })).toHaveCount(0);
  const owner = await openAs("owner");
  await owner.goto(page.url());
  await owner.getByRole("button", { name: "Record a refund" }).click();
  const dialog = owner.getByRole("dialog", { name: "Record a refund" });
  await dialog.getByLabel("Amount paid back").fill("900000");
  await dialog.getByLabel("Why it goes back").fill("The note drones after all; agreed on the telephone.");
  await dialog.getByRole("button", { name: "Record the refund" }).click();
  await expect(dialog.getByText(/^Only \$[\d,.]+ of this quote's money is here/).first()).toBeVisible();
  await checkAccessibility(owner);
  await dialog.getByLabel("Amount paid back").fill("120.50");
  await dialog.getByRole("button", { name: "Record the refund" }).click();
  await expect(dialog).toBeHidden();
  const payments = owner.getByRole("table", { name: "Payments" });
  await expect(payments.getByRole("row", { name: /refund.*drones after all.*120\.50/ })).toBeVisible();
  await checkAccessibility(owner);
  await owner.goto("/jobs?view=done&search=Sandell");
  await owner.getByRole("link", { name: /^Job \d+$/ }).click();
  await expect(owner.getByText(/^Refunded: \$120\.50\. The note drones/)).toBeVisible();
  await checkAccessibility(owner);
});

test("the desk invoices an accepted quote, the owner credits part of it, and both papers open", async ({
  page,
  openAs,
}) => {
  await signInAs(page, "desk");
  await openQuote(page, "Sandell");
  await page.getByRole("button", { name: "Issue the tax invoice" }).click();
  await page.getByLabel("The customer's order number").fill("PO 7731");
  await page.getByRole("button", { name: "Issue it" }).click();
  const papers = page.getByRole("table", { name: "Invoices" });
  const invoice = papers.getByRole("link", { name: /^Tax invoice \d+$/ });
  await expect(invoice).toBeVisible();
  await expect(page.getByRole("button", { name: "Issue the tax invoice" })).toHaveCount(0);
  await expect(papers.getByRole("button", { name: "Credit" })).toHaveCount(0);
  const pdf = await page.request.get((await invoice.getAttribute("href")) ?? "");
  expect(pdf.headers()["content-type"]).toBe("application/pdf");
  expect((await pdf.body()).subarray(0, 5).toString()).toBe("%PDF-");

  const owner = await openAs("owner");
  await owner.goto(page.url());
  await owner.getByRole("table", { name: "Invoices" }).getByRole("button", { name: "Credit" }).click();
  const dialog = owner.getByRole("dialog", { name: /^Credit invoice \d+$/ });
  await dialog.getByLabel("Why, as the customer reads it").fill("Agreed for the late hand-over.");
  await dialog.getByRole("button", { name: "Write the credit note" }).click();
  await expect(dialog.getByText("Choose the lines to take back, or enter an amount.").first()).toBeVisible();
  await checkAccessibility(owner);
  await dialog.getByLabel(/^Or an amount off the whole/).fill("110.00");
  await dialog.getByRole("button", { name: "Write the credit note" }).click();
  await expect(dialog).toBeHidden();
  const credited = owner.getByRole("table", { name: "Invoices" });
  await expect(credited.getByRole("row", { name: /Credit note.*late hand-over.*110\.00/ })).toBeVisible();
  await checkAccessibility(owner);
});

test("a customer asks, is answered, and declines; the quote and the list say why", async ({
  page,
  openAs,
}) => {
  await signInAs(page, "desk");
  await page.goto("/quotes?status=issued");
  // Any that the other tests leave alone.
  const row = page
    .getByRole("row", { name: /issued, open until/ })
    .filter({ hasNotText: /Okafor|Tamsin|Strand/ })
    .first();
  const number = (await row.getByRole("link").textContent()) ?? "";
  await row.getByRole("link").click();
  const story: QuoteStory = { customerName: "" };
  await deskMakesTheLink(page, story);
  const customer = await openAs("nobody");
  await customer.goto(story.customerLink ?? "");
  await customer.getByRole("textbox", { name: "Your question" }).fill("Does it still fit under my carport?");
  await customer.getByRole("button", { name: "Send the question" }).click();
  await expect(customer.getByText("Your question has reached the workshop.")).toBeVisible();
  await expect(customer.getByRole("textbox", { name: "Your question" })).toHaveValue("");
  await page.goto("/today");
  const waiting = page.getByText(/“Does it still fit under my carport\?” waits for an answer/);
  await expect(waiting).toBeVisible();
  await page.getByRole("link", { name: "Answer the question" }).first().click();
  await page.getByRole("textbox", { name: "Your answer" }).fill("Yes: nothing gets higher.");
  await page.getByRole("button", { name: "Send the answer" }).click();
  await expect(page.getByText("Yes: nothing gets higher.")).toBeVisible();
  await checkAccessibility(page);
  await customer.reload();
  await expect(customer.getByText("Yes: nothing gets higher.")).toBeVisible();
  await customer.getByRole("button", { name: "I do not want to go ahead" }).click();
  const form = customer.getByRole("form", { name: "I do not want to go ahead" });
  await form.getByLabel(/^Would you tell us why/).fill("We sold the caravan.");
  await form.getByRole("button", { name: "Decline this quote" }).click();
  await expect(form).toBeHidden();
  await checkAccessibility(customer);
  await page.reload();
  await expect(page.getByText("The customer declined: “We sold the caravan.”")).toBeVisible();
  await checkAccessibility(page);
  await page.goto(`/quotes?q=${number}`);
  await expect(page.getByRole("cell", { name: "declined: “We sold the caravan.”" })).toBeVisible();
});
