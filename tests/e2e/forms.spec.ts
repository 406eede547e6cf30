import type { Locator } from "@playwright/test";
import { checkAccessibility, expect, signInAs, test } from "./fixtures";

test("leaving a refused field moves nothing, and the press that leaves it counts", async ({ page }) => {
  await signInAs(page, "desk");
  await page.goto("/customers/new");
  const name = `Perpetua Quill ${Date.now()}`;
  await page.getByRole("textbox", { name: "Name" }).fill(name);
  const email = page.getByRole("textbox", { name: "E-mail" });
  await email.fill("perpetua.quill");
  const add = page.getByRole("button", { name: "Add the customer" });
  await add.click();
  await expect(email).toBeFocused();
  await expect(email).toHaveAttribute("aria-invalid", "true");
  await expect(email).toHaveAccessibleDescription(/e-mail/i);
  const described = await email.evaluate(descriptionOf);
  await checkAccessibility(page);

  await email.fill("perpetua@quill.example");
  // The button itself sinks by a pixel while it is held: its neighbour in the row tells whether the row moved.
  const neighbour = page.getByRole("link", { name: "Back to the customers" });
  const before = await middleOf(neighbour);
  const press = await middleOf(add);
  await page.mouse.move(press.x, press.y);
  await page.mouse.down();
  await expect(email).not.toBeFocused();
  expect(await middleOf(neighbour)).toEqual(before);
  expect(await email.evaluate(descriptionOf)).toBe(described);
  await page.mouse.up();
  await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
});

for (const scripts of ["with scripts", "before the scripts have come"]) {
  test(`a double press of a button adds one customer, ${scripts}`, async ({ browser, baseURL }) => {
    const context = await browser.newContext(baseURL === undefined ? {} : { baseURL });
    const page = await context.newPage();
    if (scripts !== "with scripts") await page.route(/\/_next\/static\/.*\.js/, (route) => route.abort());
    await signInAs(page, "desk");
    await page.goto("/customers/new");
    const name = `Twyla Marchbank ${Date.now()}`;
    await page.getByRole("textbox", { name: "Name" }).fill(name);
    await page.getByRole("textbox", { name: "E-mail" }).fill(`twyla.${Date.now()}@marchbank.example`);
    const add = page.getByRole("button", { name: "Add the customer" });
    const sent = page.waitForRequest((request) => request.method() === "POST");
    await add.click({ noWaitAfter: true });
    await sent;
    // The answer to the first press may be quicker than the second press.
    await add.click({ noWaitAfter: true, force: true, timeout: 2_000 }).catch(() => undefined);
    await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
    await page.goto(`/customers?q=${encodeURIComponent(name)}`);
    await expect(page.getByRole("link", { name, exact: true })).toHaveCount(1);
    await context.close();
  });
}

async function middleOf(control: Locator): Promise<{ x: number; y: number }> {
  const box = await control.boundingBox();
  if (!box) throw new Error("the control is not on the screen");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** The words read out with a field: its help and what it was refused for. */
function descriptionOf(field: Element): string {
  const ids = field.getAttribute("aria-describedby")?.split(" ") ?? [];
  return ids.map((id) => document.getElementById(id)?.textContent ?? "").join(" ");
}
