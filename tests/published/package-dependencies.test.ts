import { readFileSync } from "node:fs";
import path from "node:path";
import { gunzipSync } from "node:zlib";
import { checkPrerequisites, completePrerequisites } from "@buildproof/prerequisites";
import { clingoSearch } from "@buildproof/prerequisites/solver";
import { modelOfDebianPackages, refereeTotal } from "@buildproof/prerequisites/testing";
import { expect, test } from "vitest";

/**
 * Source: the package index of Debian 12.15 (suite bookworm, main, amd64, dated 11 July 2026): the 1,502
 * packages that gnome-core can lead to by Depends and Pre-Depends, all alternatives followed. The fields
 * Package, Installed-Size, Pre-Depends, Depends, Conflicts, Breaks and Provides are as published.
 */
const file = path.join(import.meta.dirname, "../../shared/reference/debian-12-desktop.control.gz");
const model = modelOfDebianPackages(gunzipSync(readFileSync(file)).toString("utf8"));

test("the set is as large as it is said to be", () => {
  expect(model.items).toHaveLength(1_502);
  expect(model.rules?.length).toBeGreaterThan(8_000);
});

test.each(["gnome-core", "gnome-software"])(
  "installing %s takes the least space that an independent solver finds too",
  { timeout: 120_000 },
  async (wanted) => {
    const question = { model, chosen: [wanted], minimise: "price" as const };
    const answer = await completePrerequisites(question, clingoSearch(60_000));
    expect(answer.status).toBe("optimal");
    expect(answer.add.length).toBeGreaterThan(50);
    expect(checkPrerequisites(model, [wanted, ...answer.add]).findings).toEqual([]);
    expect(answer.total).toBe(await refereeTotal(question));
    expect(answer.because.filter(({ rules }) => rules.length === 0)).toEqual([]);
  },
);

test("two sound servers clash, and an independent solver finds no way for both", {
  timeout: 60_000,
}, async () => {
  const question = { model, chosen: ["gnome-core", "pulseaudio", "pipewire-alsa"] };
  const { status, clash } = await completePrerequisites(question, clingoSearch(60_000));
  expect(status).toBe("impossible");
  expect(await refereeTotal(question)).toBeNull();
  expect(clash.chosen).not.toContain("gnome-core");
  const members = [...clash.chosen, ...clash.rules];
  for (const left of [undefined, ...members]) {
    const rules = model.rules?.filter(({ id }) => clash.rules.includes(id) && id !== left);
    const chosen = clash.chosen.filter((id) => id !== left);
    const total = await refereeTotal({ model: { items: model.items, rules }, chosen });
    expect({ left, isPossible: total !== null }).toEqual({ left, isPossible: left !== undefined });
  }
});
