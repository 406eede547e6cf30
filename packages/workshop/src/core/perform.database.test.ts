import { describe, expect, test } from "vitest";
import { z } from "zod";
import { signOutEverywhere, whoAmI } from "../identity/own-account";
import { demoWorkshop } from "../testing/demo-workshop";
import { newId } from "./new-id";
import { perform } from "./perform";
import { ok, refusals } from "./result";
import { command } from "./use-case";

const trial = demoWorkshop();
const refuse = refusals({ "no-more-customers": () => "The book is full." });

const addCustomer = command({
  name: "trial.add-customer",
  permission: "customers:write",
  input: z.strictObject({
    name: z.string().min(1, "Give the name."),
    refuseAfter: z.boolean().default(false),
  }),
  async run({ tx, workshopId, audit }, { name, refuseAfter }) {
    const id = newId();
    await tx.customer.create({ data: { id, workshopId, name, phone: "08 5550 0100", email: "" } });
    audit({ entity: "customer", entityId: id, after: { name } });
    return refuseAfter ? refuse("no-more-customers") : ok({ id });
  },
});

const customersNamed = async (name: string) =>
  (await trial.sql("select id from customer where name = $1", [name])).length;

describe("a use case", () => {
  test("writes its audit line in the same transaction, with who, what and after", async () => {
    const { id } = await trial.done("desk", addCustomer, { name: "Audited Anne" });
    const rows = await trial.sql("select * from audit_event where entity_id = $1", [id]);
    expect(rows).toMatchObject([
      { actor_name: "Noor Castellan", use_case: "trial.add-customer", after: { name: "Audited Anne" } },
    ]);
  });

  test("leaves nothing behind when it is refused after writing", async () => {
    const refusal = await trial.refused("desk", addCustomer, { name: "Halfway Hal", refuseAfter: true });
    expect(refusal).toEqual({ code: "no-more-customers", sentence: "The book is full." });
    expect(await customersNamed("Halfway Hal")).toBe(0);
  });

  test("acts once when a device sends it twice under one key, even at the same moment", async () => {
    const context = await trial.as("desk");
    const key = crypto.randomUUID();
    const send = () => perform(context, addCustomer, { name: "Twice Tom" }, { key });
    const [first, second] = await Promise.all([send(), send()]);
    expect(second).toEqual(first);
    expect(await send()).toEqual(first);
    expect(await customersNamed("Twice Tom")).toBe(1);
  });

  test("refuses a key that comes back with other content", async () => {
    const context = await trial.as("desk");
    const key = crypto.randomUUID();
    await perform(context, addCustomer, { name: "Key One" }, { key });
    const again = await perform(context, addCustomer, { name: "Key Two" }, { key });
    expect(again).toMatchObject({ ok: false, refusal: { code: "key-reused" } });
    expect(await customersNamed("Key Two")).toBe(0);
  });

  test("looks at the permission before the input, so that a stranger learns nothing from an error", async () => {
    expect((await trial.refused("technician", addCustomer, { nonsense: true })).code).toBe("not-allowed");
    expect((await trial.refused({ kind: "nobody" }, addCustomer, { nonsense: true })).code).toBe(
      "not-signed-in",
    );
    expect((await trial.refused("desk", addCustomer, { name: "" })).sentence).toBe("Give the name.");
  });

  test("ends every session of a person who signed out everywhere", async () => {
    const before = await trial.as("otherTechnician");
    await trial.done("otherTechnician", signOutEverywhere, {});
    expect(await perform(before, whoAmI, {})).toMatchObject({ ok: false, refusal: { code: "session-over" } });
    expect(await trial.done("otherTechnician", whoAmI, {})).toMatchObject({ name: "Joss Varga" });
  });
});

describe("the audit record", () => {
  test.each([
    "update audit_event set actor_name = 'somebody else'",
    "delete from audit_event",
    "truncate audit_event",
  ])("refuses even its owner: %s", async (statement) => {
    await trial.done("desk", addCustomer, { name: "Kept Kim" });
    await expect(trial.sql(statement)).rejects.toThrow(/append_only|append-only/);
  });
});
