import { beforeEach, describe, expect, test } from "vitest";
import { perform } from "../core/perform";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { addPerson } from "./add-person";
import { changePerson } from "./change-person";
import { endSessions } from "./end-sessions";
import { getPerson } from "./get-person";
import { givePassword } from "./give-password";
import { listPeople } from "./list-people";
import { whoAmI } from "./own-account";
import { signIn } from "./sign-in";

const trial = demoWorkshop();

const newcomer = {
  name: "Oona Sarkis",
  email: " Oona@Saltbush.example",
  password: "a first password",
  roles: ["technician"],
  skills: ["stores"],
};

async function idOf(email: string): Promise<string> {
  const [row] = await trial.sql("select id from person where email = $1", [email]);
  return String(row?.id);
}

async function canSignIn(email: string, password: string): Promise<boolean> {
  const nobody = await trial.as({ kind: "nobody" });
  return (await signIn({ ...nobody, address: "192.0.2.77" }, { email, password })).ok;
}

describe("the list of people", () => {
  test("holds the workshop's own and nobody else's", async () => {
    const people = await trial.done("owner", listPeople, {});
    expect(people.map(({ email }) => email)).toContain("noor@saltbush.example");
    expect(people.every(({ email }) => email.endsWith("@saltbush.example"))).toBe(true);
    expect(people.filter(({ isMe }) => isMe).map(({ email }) => email)).toEqual(["irena@saltbush.example"]);
  });

  test("shows nothing of a password", async () => {
    const people = await trial.done("owner", listPeople, {});
    expect(JSON.stringify(people)).not.toMatch(/scrypt|password/i);
  });
});

describe("adding somebody", () => {
  test("lets them sign in, and puts whoever works on vehicles on the plan", async () => {
    const { personId } = await trial.done("owner", addPerson, newcomer);
    expect(await canSignIn("oona@saltbush.example", "a first password")).toBe(true);
    expect(await trial.sql("select name from resource where person_id = $1", [personId])).toEqual([
      { name: "Oona Sarkis" },
    ]);
    const audit = await trial.sql("select after::text as after from audit_event where entity_id = $1", [
      personId,
    ]);
    expect(audit).toHaveLength(1);
    expect(String(audit[0]?.after)).not.toMatch(/password|scrypt/);
  });

  test.each([
    [
      "an e-mail that is taken here",
      { ...newcomer, name: "Another", email: "noor@saltbush.example" },
      "email-taken",
    ],
    [
      "a name that is taken here",
      { ...newcomer, name: "noor castellan", email: "n2@saltbush.example" },
      "name-taken",
    ],
    [
      "an e-mail of another workshop",
      { ...newcomer, name: "Third", email: "lena@gulfboost.example" },
      "person-email-key",
    ],
    ["no role", { ...newcomer, roles: [] }, "invalid-input"],
    ["a role that does not exist", { ...newcomer, roles: ["chief"] }, "invalid-input"],
    ["a short password", { ...newcomer, password: "short" }, "invalid-input"],
    ["something that is no e-mail", { ...newcomer, email: "oona" }, "invalid-input"],
  ])("refuses %s", async (_, input, code) => {
    const refusal = await trial.refused("owner", addPerson, input);
    expect(refusal.code).toBe(code);
    expect(refusal.sentence).toMatch(/\.$/);
  });
});

describe("changing somebody", () => {
  const asTechnician = { roles: ["technician"], skills: ["stores", "second-signatory"], active: true };

  beforeEach(async () => {
    await trial.sql(
      "update person set active = true, roles = '{owner}' where email = 'irena@saltbush.example'",
    );
  });

  test("sets roles and skills; the next thing they do already goes by them", async () => {
    const personId = await idOf("noor@saltbush.example");
    await trial.done("owner", changePerson, {
      personId,
      roles: ["desk", "manager"],
      skills: ["stores"],
      active: true,
    });
    const me = await trial.done("desk", whoAmI, {});
    expect(me).toMatchObject({ roles: ["desk", "manager"], skills: ["stores"] });
  });

  test("who is deactivated is signed out, cannot sign in, and can come back", async () => {
    const personId = await idOf("joss@saltbush.example");
    const session = await trial.as("otherTechnician");
    await trial.done("owner", changePerson, { personId, ...asTechnician, active: false });
    expect(await perform(session, whoAmI, {})).toMatchObject({
      ok: false,
      refusal: { code: "session-over" },
    });
    expect(await canSignIn("joss@saltbush.example", "drive-gently-42")).toBe(false);
    await trial.done("owner", changePerson, { personId, ...asTechnician });
    expect(await canSignIn("joss@saltbush.example", "drive-gently-42")).toBe(true);
    expect(await perform(session, whoAmI, {})).toMatchObject({ ok: false });
  });

  test("the last active owner can be neither deactivated nor stripped", async () => {
    const personId = await idOf("irena@saltbush.example");
    const off = { personId, roles: ["owner"], skills: [], active: false };
    const stripped = { personId, roles: ["manager"], skills: [], active: true };
    expect((await trial.refused("owner", changePerson, off)).code).toBe("last-owner");
    expect((await trial.refused("owner", changePerson, stripped)).code).toBe("last-owner");
  });

  test("two owners who deactivate each other at the same moment leave one", async () => {
    await trial.sql("update person set roles = '{manager,owner}' where email = 'marek@saltbush.example'");
    const [irena, marek] = [await idOf("irena@saltbush.example"), await idOf("marek@saltbush.example")];
    const off = (personId: string) => ({ personId, roles: ["owner"], skills: [], active: false });
    const results = await Promise.all([
      perform(await trial.as("owner"), changePerson, off(marek)),
      perform(await trial.as("manager"), changePerson, off(irena)),
    ]);
    expect(results.filter((result) => result.ok)).toHaveLength(1);
    const [left] = await trial.sql(
      "select count(*)::int as owners from person where active and 'owner' = any(roles) and email like '%saltbush%'",
    );
    expect(left?.owners).toBe(1);
    await trial.sql(
      "update person set active = true where email in ('marek@saltbush.example', 'irena@saltbush.example')",
    );
    await trial.sql("update person set roles = '{manager}' where email = 'marek@saltbush.example'");
  });

  test("somebody whose clock runs is not deactivated", async () => {
    const personId = await idOf("tilda@saltbush.example");
    await trial.sql(
      "insert into clock_entry (id, workshop_id, job_id, person_id, operation_code, started_at) select gen_random_uuid(), workshop_id, id, $1, 'fit-lift', $2 from job where number = (select min(number) from job where workshop_id = (select workshop_id from person where id = $1)) and workshop_id = (select workshop_id from person where id = $1)",
      [personId, demoNow],
    );
    const refusal = await trial.refused("owner", changePerson, { personId, ...asTechnician, active: false });
    expect(refusal.code).toBe("clock-running");
    expect(refusal.sentence).toMatch(/Tilda Brennock is clocked on to job \d+/);
    await trial.sql("delete from clock_entry where stopped_at is null");
  });

  test("somebody of another workshop is not found, whatever is asked", async () => {
    const personId = await idOf("lena@gulfboost.example");
    expect((await trial.refused("owner", getPerson, { personId })).code).toBe("person-not-found");
    expect((await trial.refused("owner", getPerson, { personId: "no id" })).code).toBe("person-not-found");
    expect((await trial.refused("owner", changePerson, { personId, ...asTechnician })).code).toBe(
      "person-not-found",
    );
    expect((await trial.refused("owner", endSessions, { personId })).code).toBe("person-not-found");
    expect((await trial.refused("owner", givePassword, { personId, password: "twelve letters" })).code).toBe(
      "person-not-found",
    );
  });
});

test("ending a person's sessions signs them out everywhere and lets them in again", async () => {
  const session = await trial.as("desk");
  await trial.done("owner", endSessions, { personId: await idOf("noor@saltbush.example") });
  expect(await perform(session, whoAmI, {})).toMatchObject({ ok: false, refusal: { code: "session-over" } });
  expect(await canSignIn("noor@saltbush.example", "drive-gently-42")).toBe(true);
});

test("a given password replaces the old one and ends its sessions", async () => {
  const session = await trial.as("desk");
  const personId = await idOf("noor@saltbush.example");
  await trial.done("owner", givePassword, { personId, password: "something to change" });
  expect(await perform(session, whoAmI, {})).toMatchObject({ ok: false, refusal: { code: "session-over" } });
  expect(await canSignIn("noor@saltbush.example", "drive-gently-42")).toBe(false);
  expect(await canSignIn("noor@saltbush.example", "something to change")).toBe(true);
  expect((await trial.refused("owner", givePassword, { personId, password: "short" })).sentence).toMatch(
    /12/,
  );
});
