import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import type { Role } from "./actor";
import { allUseCases } from "./all-use-cases";
import { newId } from "./new-id";
import { perform } from "./perform";
import { permissions } from "./permissions";

const trial = demoWorkshop();

/** Told before the input is looked at: who may not do it. Anything else means the door was open. */
const shut = new Set(["not-allowed", "not-signed-in", "session-over", "link-not-valid"]);
/** No use case takes this, so that nothing runs behind an open door. */
const impossibleInput = { "not a field of any use case": true };

const byRole = { desk: "desk", manager: "manager", technician: "otherTechnician", owner: "owner" } as const;

describe("every use case, held against every role", () => {
  test.each(allUseCases.map((useCase) => [useCase.name, useCase] as const))("%s", async (_, useCase) => {
    const allowed: readonly string[] = permissions[useCase.permission];
    for (const [role, part] of Object.entries(byRole)) {
      await trial.sql("update person set roles = $1::role[] where name = $2", [`{${role}}`, nameOf[part]]);
      const result = await perform(await trial.as(part), useCase, impossibleInput);
      const isOpen = result.ok || !shut.has(result.refusal.code);
      expect({ role, isOpen }).toEqual({ role, isOpen: allowed.includes(role as Role) });
    }
    const nobody = await perform(await trial.as({ kind: "nobody" }), useCase, impossibleInput);
    expect(nobody).toMatchObject({ ok: false, refusal: { code: "not-signed-in" } });
    const unknownLink = await perform(await trial.as(await strangerWithLink()), useCase, impossibleInput);
    expect(unknownLink).toMatchObject({ ok: false, refusal: { code: "link-not-valid" } });
  });

  test("a person without any role may do nothing", async () => {
    await trial.sql("update person set roles = '{}' where name = 'Joss Varga'");
    for (const useCase of allUseCases) {
      const result = await perform(await trial.as("otherTechnician"), useCase, impossibleInput);
      expect(result).toMatchObject({ ok: false, refusal: { code: "not-allowed" } });
    }
  });

  test("a person who was deactivated may do nothing", async () => {
    await trial.sql("update person set roles = '{owner}', active = false where name = 'Joss Varga'");
    for (const useCase of allUseCases) {
      const result = await perform(await trial.as("otherTechnician"), useCase, impossibleInput);
      expect(result).toMatchObject({ ok: false, refusal: { code: "session-over" } });
    }
  });
});

describe("the list of use cases", () => {
  test("names each once", () => {
    const names = allUseCases.map((useCase) => useCase.name);
    expect(new Set(names).size).toBe(names.length);
  });

  test("holds every use case that the source defines", () => {
    const listed = allUseCases.map((useCase) => useCase.name).sort();
    expect(listed).toEqual(definedNames().sort());
  });
});

const nameOf = {
  desk: "Noor Castellan",
  manager: "Marek Oduya",
  otherTechnician: "Joss Varga",
  owner: "Irena Halloway",
};

async function strangerWithLink() {
  const [row] = await trial.sql("select id from workshop limit 1");
  return { kind: "customer", workshopId: String(row?.id), linkId: newId(), versionId: newId() } as const;
}

/** The `name:` of every `command({`, `query({` … in the package's source. */
function definedNames(): string[] {
  const source = join(import.meta.dirname, "..");
  const files = readdirSync(source, { recursive: true, encoding: "utf8" }).filter(
    (file) => file.endsWith(".ts") && !file.endsWith(".test.ts") && !file.startsWith("testing"),
  );
  const definition = /\b(?:command|query|linkCommand|linkQuery)\(\{\s*name: "([^"]+)"/g;
  return files.flatMap((file) =>
    [...readFileSync(join(source, file), "utf8").matchAll(definition)].map((match) => match[1] ?? ""),
  );
}
