import type { Page } from "@playwright/test";
import { expect, test } from "./fixtures";

/** About as many keys as a practised hand presses in a minute, with the talking in between. */
const MOST_KEYS = 200;
const MOST_TABS = 12;

/** A hand on the keyboard, which counts what it presses and never touches the mouse. */
function handsOn(page: Page) {
  let pressed = 0;
  const press = async (key: string) => {
    pressed += 1;
    await page.keyboard.press(key);
  };
  return {
    press,
    pressed: () => pressed,
    async type(text: string) {
      pressed += text.length;
      await page.keyboard.type(text);
    },
    /** Goes on by the tab key to what carries these words. */
    async tabTo(role: "textbox" | "button" | "link", name: string | RegExp) {
      const wanted = page.getByRole(role, { name });
      for (let tabs = 0; tabs <= MOST_TABS; tabs += 1) {
        if (await wanted.evaluateAll((found) => found.some((each) => each === document.activeElement)))
          return;
        await press("Tab");
      }
      throw new Error(`${MOST_TABS} tabs do not reach the ${role} ${name}`);
    },
  };
}

test("on the telephone, a first call becomes a draft quote without the mouse", async ({ openAs }) => {
  const desk = await openAs("desk");
  await desk.goto("/today");
  await expect(desk.getByRole("heading", { level: 1, name: "Today" })).toBeVisible();
  const hands = handsOn(desk);

  await test.step("who calls: the search offers a new customer", async () => {
    await hands.press("/");
    await hands.type("Anselm Thorvey");
    await expect(desk.getByRole("option", { name: /Anselm Thorvey/ })).toBeVisible();
    await hands.press("Enter");
    await expect(desk.getByRole("textbox", { name: "Name" })).toBeFocused();
    await hands.tabTo("textbox", "Telephone");
    await hands.type("0491 570 006");
    await hands.press("Enter");
    await expect(desk.getByRole("heading", { level: 1, name: "Anselm Thorvey" })).toBeVisible();
  });

  await test.step("the vehicle, by its VIN", async () => {
    await hands.tabTo("link", "New vehicle");
    await hands.press("Enter");
    await expect(desk.getByRole("heading", { level: 1, name: "New vehicle" })).toBeVisible();
    await hands.tabTo("textbox", "VIN");
    await hands.type("6ZZZUA4RXHJ371399");
    await hands.tabTo("button", /Model/);
    await hands.type("Kerrow Ridgewold 5.7");
    await hands.tabTo("textbox", "Plate");
    await hands.type("8QP 1ZZ");
    await hands.tabTo("textbox", "Odometer");
    await hands.type("24310");
    await hands.tabTo("button", /Octane/);
    await hands.type("98");
    await hands.press("Tab");
    await hands.press("Space");
    await expect(desk.getByRole("checkbox", { name: "Towing" })).toBeChecked();
    await hands.tabTo("textbox", "Heaviest trailer");
    await hands.press("Enter");
    await expect(desk.getByRole("heading", { level: 2, name: "Start a build" })).toBeVisible();
  });

  await test.step("what it is wanted for, and the quote", async () => {
    await hands.tabTo("textbox", "What the owner wants");
    await hands.type("tow 3.0 t up the long grade");
    await hands.tabTo("button", /Begin with/);
    await hands.type("Long Grade");
    await hands.tabTo("button", "Start the build");
    await hands.press("Enter");
    await expect(desk.getByRole("region", { name: "Air" })).toBeVisible();
    await hands.tabTo("button", "Quote this");
    await hands.press("Enter");
    await expect(desk.getByRole("heading", { level: 1, name: /^Quote \d+, version 1/ })).toBeVisible();
  });

  expect(hands.pressed()).toBeLessThan(MOST_KEYS);
});
