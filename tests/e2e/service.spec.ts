import { checkAccessibility, expect, signInAs, test } from "./fixtures";

test("nobody gets further than the sign-in page without signing in", async ({ page }) => {
  await page.goto("/");
  await expect(page).toHaveURL(/\/sign-in/);
  await checkAccessibility(page);
});

test.describe("everybody in the demo can sign in", () => {
  for (const who of ["desk", "manager", "technician", "owner", "irena@saltbush.example"] as const) {
    test(`as ${who}`, async ({ page }) => {
      await signInAs(page, who);
      await page.goto("/");
      await expect(page).not.toHaveURL(/\/sign-in/);
    });
  }
});

test("two people work side by side without sharing a session", async ({ openAs }) => {
  const desk = await openAs("desk");
  const customer = await openAs("nobody");
  await desk.goto("/");
  await expect(desk).not.toHaveURL(/\/sign-in/);
  await customer.goto("/");
  await expect(customer).toHaveURL(/\/sign-in/);
});

test.describe("an error in the browser's console", () => {
  test("fails the test that did not expect it", async ({ page }) => {
    // Playwright turns this round: the test passes because it fails.
    test.fail();
    await page.goto("/sign-in");
    await page.evaluate(() => console.error("planted"));
  });

  test("is let pass where the test expects it", async ({ page, expectConsoleError }) => {
    expectConsoleError(/planted/);
    await page.goto("/sign-in");
    await page.evaluate(() => console.error("planted"));
  });
});
