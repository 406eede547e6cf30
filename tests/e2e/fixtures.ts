import AxeBuilder from "@axe-core/playwright";
import { type Browser, type BrowserContext, test as base, expect, type Page } from "@playwright/test";
import { demoPassword, demoPeople, gulfPeople } from "../../prisma/demo/demo-people";

export { expect };

/** Somebody of the demo: by role (the first who holds it) or by e-mail address. */
export type Who = "desk" | "manager" | "technician" | "owner" | `${string}@${string}`;

type Fixtures = {
  /** Declares an error the browser will report because of what this test does on purpose. */
  expectConsoleError(pattern: RegExp): void;
  /** A page of its own, signed in as that person; "nobody" has no account, like a customer with a link. */
  openAs(who: Who | "nobody"): Promise<Page>;
};

type Watch = { readonly seen: string[]; readonly expected: RegExp[] };

/** Every test fails on an error the browser reports and the test did not declare. */
export const test = base.extend<Fixtures & { watch: Watch }>({
  watch: [
    async ({ context }, use) => {
      const watch: Watch = { seen: [], expected: [] };
      watchOver(context, watch);
      await use(watch);
      const surprising = watch.seen.filter((error) => !watch.expected.some((pattern) => pattern.test(error)));
      expect(surprising, "errors in the browser's console").toEqual([]);
    },
    { auto: true },
  ],
  expectConsoleError: async ({ watch }, use) => {
    await use((pattern) => watch.expected.push(pattern));
  },
  openAs: async ({ browser, watch, baseURL, viewport }, use) => {
    const opened: BrowserContext[] = [];
    await use(async (who) => {
      const page = await openPage(browser, { baseURL, viewport });
      opened.push(page.context());
      watchOver(page.context(), watch);
      if (who !== "nobody") await signInAs(page, who);
      return page;
    });
    for (const context of opened) await context.close();
  },
});

/** Signs in on the page's own cookies, without going through the form. */
export async function signInAs(page: Page, who: Who): Promise<void> {
  const email = emailOf(who);
  const csrf = await page.request.get("/api/auth/csrf");
  const { csrfToken } = await csrf.json();
  const answer = await page.request.post("/api/auth/callback/credentials", {
    form: { csrfToken, email, password: demoPassword, json: "true" },
    maxRedirects: 0,
  });
  expect(answer.status(), `sign-in of ${email}`).toBe(200);
  expect(await answer.text(), `sign-in of ${email}`).not.toContain("error=");
}

/** No violation of WCAG 2.2 A and AA that axe can find on the page as it stands. */
export async function checkAccessibility(page: Page): Promise<void> {
  await page.evaluate(laySticky, true);
  const { violations } = await new AxeBuilder({ page })
    .options({
      runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
      resultTypes: ["violations"],
    })
    // In the page itself and not by way of a second one: three times as quick, and no page of ours has frames.
    .setLegacyMode()
    // What was read out a moment ago lies here, naming a button that may be gone; it is seen by nobody.
    .exclude("[data-live-announcer]")
    .analyze();
  await page.evaluate(laySticky, false);
  const found = violations.map(({ id, help, nodes }) => ({
    id,
    help,
    where: nodes.map((node) => node.html),
  }));
  expect(found, `accessibility of ${page.url()}`).toEqual([]);
}

/**
 * Lets what sticks to the edge of the window lie where it stands in the page, or stick again: wherever the page
 * is scrolled, it covers half of some target, which would then be measured as too small.
 */
function laySticky(isLaid: boolean): void {
  for (const part of document.querySelectorAll<HTMLElement>("body *")) {
    if (isLaid && getComputedStyle(part).position === "sticky") {
      part.dataset.laid = "";
      part.style.position = "static";
    } else if (!isLaid && "laid" in part.dataset) {
      delete part.dataset.laid;
      part.style.removeProperty("position");
    }
  }
}

function emailOf(who: Who): string {
  if (who.includes("@")) return who;
  const person = [...demoPeople, ...gulfPeople].find(({ roles }) => roles.some((role) => role === who));
  if (!person) throw new Error(`nobody in the demo is ${who}`);
  return person.email;
}

function watchOver(context: BrowserContext, watch: Watch): void {
  context.on("console", (message) => {
    if (message.type() === "error") watch.seen.push(`${message.text()} (${message.location().url})`);
  });
  context.on("weberror", (error) => watch.seen.push(String(error.error())));
}

async function openPage(
  browser: Browser,
  { baseURL, viewport }: { baseURL: string | undefined; viewport: { width: number; height: number } | null },
): Promise<Page> {
  const context = await browser.newContext({ viewport, ...(baseURL === undefined ? {} : { baseURL }) });
  return context.newPage();
}
