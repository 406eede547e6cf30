import type { Locator, Page } from "@playwright/test";
import { demoPassword } from "../../prisma/demo/demo-people";
import { checkAccessibility, expect, test } from "./fixtures";

const noMatch = /do not match, or there were too many tries/;
/** The browser reports every refused sign-in by itself. */
const unauthorised = /401/;

/** Types e-mail and password at the door and sends them. */
async function enter(page: Page, email: string, password: string): Promise<void> {
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
}

/** Ticks a box or takes its tick away, by keyboard. */
async function press(form: Locator, name: string): Promise<void> {
  await form.getByRole("checkbox", { name }).press("Space");
}

/** The owner lets somebody new in, for a test of their own. */
async function addSomebody(owner: Page, name: string, role: string): Promise<`${string}@${string}`> {
  const email = `${name.toLowerCase().replaceAll(" ", ".")}@saltbush.example` as const;
  await owner.goto("/people");
  const form = owner.getByRole("form", { name: "Add a person" });
  await form.getByLabel("Name").fill(name);
  await form.getByLabel("E-mail").fill(email);
  await form.getByLabel("First password").fill(demoPassword);
  await press(form, role);
  await form.getByRole("button", { name: "Add the person" }).click();
  await expect(owner.getByRole("row", { name: email })).toBeVisible();
  return email;
}

test("signing in brings a person to the page they asked for, and signing out takes them out", async ({
  page,
}) => {
  await page.goto("/account");
  await expect(page).toHaveURL(/\/sign-in\?next=%2Faccount/);
  await enter(page, "noor@saltbush.example", demoPassword);
  await expect(page).toHaveURL(/\/account$/);
  await expect(page.getByRole("heading", { name: "Noor Castellan" })).toBeVisible();
  await checkAccessibility(page);
  await page.getByRole("button", { name: /Noor Castellan/ }).click();
  await page.getByRole("menuitem", { name: "Sign out" }).click();
  await expect(page).toHaveURL(/\/sign-in/);
  await page.goto("/account");
  await expect(page).toHaveURL(/\/sign-in/);
});

test("the way back keeps what was asked of the page", async ({ page }) => {
  await page.goto("/jobs?view=all&search=Okafor");
  await enter(page, "noor@saltbush.example", demoPassword);
  await expect(page).toHaveURL(/\/jobs\?view=all&search=Okafor$/);
});

test("a way back that leads to another site is not taken", async ({ page, baseURL }) => {
  await page.goto("/sign-in?next=//elsewhere.example/account");
  await enter(page, "noor@saltbush.example", demoPassword);
  await page.waitForURL((url) => !url.pathname.startsWith("/sign-in"));
  expect(page.url().startsWith(baseURL ?? "none")).toBe(true);
});

test("a wrong password is answered in one sentence and the e-mail stays typed", async ({
  page,
  expectConsoleError,
}) => {
  expectConsoleError(unauthorised);
  await page.goto("/sign-in");
  await enter(page, "marek@saltbush.example", "not the password");
  await expect(page.getByRole("alert").filter({ hasText: noMatch })).toBeVisible();
  await expect(page.getByLabel("E-mail")).toHaveValue("marek@saltbush.example");
  await checkAccessibility(page);
});

test("after five wrong passwords the right one is refused too, in the same words", async ({
  openAs,
  page,
  expectConsoleError,
}) => {
  expectConsoleError(unauthorised);
  const email = await addSomebody(await openAs("owner"), "Wren Lockyer", "Technician");
  await page.goto("/sign-in");
  const alert = page.getByRole("alert").filter({ hasText: noMatch });
  for (let tries = 0; tries < 5; tries += 1) {
    const answered = page.waitForResponse(/callback\/credentials/);
    await enter(page, email, `wrong ${tries}`);
    await answered;
    await expect(alert).toBeVisible();
  }
  const answered = page.waitForResponse(/callback\/credentials/);
  await enter(page, email, demoPassword);
  await answered;
  await expect(alert).toBeVisible();
  await expect(page).toHaveURL(/\/sign-in/);
});

test("signing out everywhere ends the session in another browser", async ({ openAs }) => {
  const email = await addSomebody(await openAs("owner"), "Pell Arnott", "Front desk");
  const here = await openAs(email);
  const there = await openAs(email);
  await there.goto("/account");
  await expect(there.getByRole("heading", { name: "Pell Arnott" })).toBeVisible();
  await here.goto("/account");
  await here.getByRole("button", { name: "Sign out everywhere" }).click();
  await expect(here).toHaveURL(/\/sign-in/);
  await there.goto("/account");
  await expect(there).toHaveURL(/\/sign-in/);
});

test("a person changes the password and signs in with the new one", async ({
  openAs,
  page,
  expectConsoleError,
}) => {
  expectConsoleError(unauthorised);
  const email = await addSomebody(await openAs("owner"), "Tamsin Vole", "Front desk");
  const desk = await openAs(email);
  await desk.goto("/account");
  const form = desk.getByRole("form", { name: "Change the password" });
  await form.getByLabel("Present password").fill("not the present one");
  await form.getByLabel("New password").fill("a longer new secret");
  await form.getByRole("button", { name: "Change the password" }).click();
  await expect(form.getByRole("alert")).toContainText("The present password is not right");
  await form.getByLabel("Present password").fill(demoPassword);
  await form.getByLabel("New password").fill("a longer new secret");
  await form.getByRole("button", { name: "Change the password" }).click();
  await expect(desk.getByText("Your password is changed. Sign in with the new one.")).toBeVisible();
  await checkAccessibility(desk);
  await page.goto("/sign-in");
  await enter(page, email, demoPassword);
  await expect(page.getByRole("alert").filter({ hasText: noMatch })).toBeVisible();
  await enter(page, email, "a longer new secret");
  await expect(page).not.toHaveURL(/\/sign-in/);
});

test("the session's cookie is out of reach of scripts and ends with the working day", async ({ openAs }) => {
  const desk = await openAs("desk");
  const session = (await desk.context().cookies()).find(({ name }) => name.endsWith("session-token"));
  expect(session).toMatchObject({ httpOnly: true, sameSite: "Lax" });
  const hoursLeft = ((session?.expires ?? 0) - Date.now() / 1000) / 3600;
  expect(hoursLeft).toBeGreaterThan(11.9);
  expect(hoursLeft).toBeLessThan(12.1);
});

test("a session that was tampered with, or has run out, leads to the door", async ({ openAs }) => {
  const desk = await openAs("desk");
  const [session] = (await desk.context().cookies()).filter(({ name }) => name.endsWith("session-token"));
  if (!session) throw new Error("signing in set no session");
  const half = session.value.length / 2;
  const bent = `${session.value.slice(0, half)}${session.value[half] === "A" ? "B" : "A"}${session.value.slice(half + 1)}`;
  await desk.context().addCookies([{ ...session, value: bent }]);
  await desk.goto("/account");
  await expect(desk).toHaveURL(/\/sign-in/);
  await desk.context().addCookies([{ ...session, expires: Date.now() / 1000 - 1 }]);
  await desk.goto("/account");
  await expect(desk).toHaveURL(/\/sign-in/);
});

test.describe("people", () => {
  test("the owner lists them, adds one, changes what they may do, and ends it", async ({ openAs }) => {
    const owner = await openAs("owner");
    const email = await addSomebody(owner, "Idris Fennimore", "Technician");
    await checkAccessibility(owner);
    await owner.getByRole("link", { name: "Idris Fennimore" }).click();
    await expect(owner.getByRole("heading", { name: "Idris Fennimore" })).toBeVisible();
    // What was announced of the form before is still in the page for some seconds, pointing at what has gone.
    await owner.reload();
    await checkAccessibility(owner);

    const theirs = await openAs(email);
    await theirs.goto("/account");
    await expect(theirs.getByText("technician").first()).toBeVisible();

    const duties = owner.getByRole("form", { name: "Roles, skills, sign-in" });
    await press(duties, "Manager");
    await press(duties, "Stores");
    await duties.getByRole("button", { name: "Save" }).click();
    await expect(owner.getByText("Idris Fennimore: saved.")).toBeVisible();
    await theirs.goto("/account");
    await expect(theirs.getByText(/manager/).first()).toBeVisible();

    await owner.getByRole("form", { name: "Sessions" }).getByRole("button").click();
    await expect(owner.getByText("Idris Fennimore is signed out everywhere.")).toBeVisible();
    await theirs.goto("/account");
    await expect(theirs).toHaveURL(/\/sign-in/);

    await press(duties, "May sign in");
    await duties.getByRole("button", { name: "Save" }).click();
    await expect(owner.getByText("deactivated")).toBeVisible();
  });

  test("a role that is missing and an e-mail that is taken are said at the form, and nothing typed is lost", async ({
    openAs,
  }) => {
    const owner = await openAs("owner");
    await owner.goto("/people");
    const form = owner.getByRole("form", { name: "Add a person" });
    await form.getByLabel("Name").fill("Double Entry");
    await form.getByLabel("E-mail").fill("noor@saltbush.example");
    await form.getByLabel("First password").fill(demoPassword);
    await form.getByRole("button", { name: "Add the person" }).click();
    await expect(form.getByRole("alert")).toContainText("Tick at least one role");
    await expect(form.getByLabel("Name")).toHaveValue("Double Entry");
    await press(form, "Front desk");
    await form.getByRole("button", { name: "Add the person" }).click();
    await expect(form.getByRole("alert")).toContainText("signs in with that e-mail already");
    await expect(form.getByLabel("E-mail")).toHaveValue("noor@saltbush.example");
    await expect(form.getByLabel("First password")).toHaveValue(demoPassword);
  });

  test("the last active owner stays owner", async ({ openAs }) => {
    const owner = await openAs("owner");
    await owner.goto("/people");
    await owner.getByRole("link", { name: "Irena Halloway" }).click();
    const duties = owner.getByRole("form", { name: "Roles, skills, sign-in" });
    await press(duties, "May sign in");
    await duties.getByRole("button", { name: "Save" }).click();
    await expect(duties.getByRole("alert")).toContainText("This is the last active owner");
  });

  test("nobody but the owner sees the page", async ({ openAs }) => {
    const manager = await openAs("manager");
    await manager.goto("/people");
    await expect(manager.getByText("Your role does not include this")).toBeVisible();
    await expect(manager.getByRole("link", { name: "People" })).toHaveCount(0);
    await checkAccessibility(manager);
  });
});
