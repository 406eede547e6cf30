import { checkAccessibility, expect, test } from "./fixtures";

test("a manager sees what the catalogue allows and opens a build that exceeds a limit", async ({
  openAs,
}) => {
  // The whole proof is awaited, and beside it other tests and their searches run.
  test.setTimeout(120_000);
  const manager = await openAs("manager");
  await manager.goto("/catalogue/proof");
  const proof = manager.getByRole("region", { name: "Proof of the catalogue" });
  await expect(proof.getByRole("heading", { name: "Limits" })).toBeVisible({ timeout: 75_000 });
  await expect(proof.getByText(/Of \d+ limits, \d+ hold for every build that can be sold/)).toBeVisible();

  const limits = proof.getByRole("table", { name: "Limits by vehicle" });
  const gearbox = limits.getByRole("row", { name: /^gearbox torque/ });
  await expect(gearbox).toContainText("kept unless set aside");
  const builds = proof.getByRole("table", { name: "Builds by vehicle and package" });
  await expect(builds.getByRole("row", { name: /Kerrow Ridgewold 5\.7 Long Grade 2\.4/ })).toContainText(
    /\d,\d{3}/,
  );
  await proof.getByRole("button", { name: /^What choices bring along/ }).click();
  await expect(
    proof.getByText(/^Every build with .* has .*Boosted engine calibration/).first(),
  ).toBeVisible();
  await checkAccessibility(manager);

  await proof
    .getByRole("form", { name: "gearbox torque, Kerrow Ridgewold 5.7", exact: true })
    .getByRole("button", { name: "Open this build" })
    .click();
  await expect(manager).toHaveURL(/\/builds\/[0-9a-f-]{36}$/);
  await expect(
    manager.getByText(/Example from the catalogue’s proof: gearbox torque exceeded/).first(),
  ).toBeVisible();
});

test("the front desk is told that the proof is for manager and owner", async ({
  openAs,
  expectConsoleError,
}) => {
  expectConsoleError(/400/);
  const desk = await openAs("desk");
  await desk.goto("/catalogue/proof");
  await expect(desk.getByText("Your role does not include this")).toBeVisible();
  await checkAccessibility(desk);
});
