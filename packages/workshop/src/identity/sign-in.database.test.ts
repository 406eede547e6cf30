import { describe, expect, test } from "vitest";
import { perform } from "../core/perform";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { changePassword, whoAmI } from "./own-account";
import { signIn } from "./sign-in";

const trial = demoWorkshop();
const password = "drive-gently-42";
const minutes = (count: number) => new Date(demoNow.getTime() + count * 60_000);

async function trySignIn(email: string, typed: string, at: Date = demoNow, address = "192.0.2.7") {
  const context = await trial.as({ kind: "nobody" }, at);
  return signIn({ ...context, address }, { email, password: typed });
}

describe("signing in", () => {
  test("takes the right password, whatever the case of the e-mail and the spaces round it", async () => {
    const result = await trySignIn("  Noor@Saltbush.EXAMPLE ", password);
    expect(result).toMatchObject({ ok: true, value: { sessionCounter: 0 } });
  });

  test("says the same of a wrong password, an unknown e-mail, a deactivated person and nonsense", async () => {
    await trial.sql("update person set active = false where email = 'joss@saltbush.example'");
    const answers = [
      await trySignIn("noor@saltbush.example", "wrong"),
      await trySignIn("nobody@saltbush.example", password),
      await trySignIn("joss@saltbush.example", password),
      await trySignIn("", ""),
      await trySignIn("x".repeat(1000), "y".repeat(1000)),
    ];
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(answers[0]).toMatchObject({ ok: false, refusal: { code: "sign-in-failed" } });
  });

  test("closes an account after five failures, even to the right password, without saying so", async () => {
    for (let tries = 0; tries < 5; tries += 1)
      await trySignIn("irena@saltbush.example", "wrong", demoNow, `192.0.2.${20 + tries}`);
    const locked = await trySignIn("irena@saltbush.example", password, minutes(1), "192.0.2.30");
    expect(locked).toEqual(await trySignIn("nobody@saltbush.example", "x", minutes(1), "192.0.2.31"));
    expect(await trySignIn("irena@saltbush.example", password, minutes(16), "192.0.2.30")).toMatchObject({
      ok: true,
    });
  });

  test("forgets the failures before a success", async () => {
    for (let tries = 0; tries < 4; tries += 1)
      await trySignIn("marek@saltbush.example", "wrong", demoNow, "192.0.2.40");
    expect(await trySignIn("marek@saltbush.example", password, minutes(1), "192.0.2.40")).toMatchObject({
      ok: true,
    });
    await trySignIn("marek@saltbush.example", "wrong", minutes(2), "192.0.2.40");
    expect(await trySignIn("marek@saltbush.example", password, minutes(3), "192.0.2.40")).toMatchObject({
      ok: true,
    });
  });

  test("closes an address that has failed thirty times over many accounts", async () => {
    // Twenty-nine straight into the record: a refused try costs a third of a second, on purpose.
    await trial.sql(
      "select record_sign_in_attempt(gen_random_uuid(), 'guess-' || n || '@saltbush.example', '198.51.100.9', false, $1) from generate_series(1, 29) n",
      [demoNow],
    );
    expect(await trySignIn("tilda@saltbush.example", password, minutes(1), "198.51.100.9")).toMatchObject({
      ok: true,
    });
    await trySignIn("guess-30@saltbush.example", "wrong", minutes(1), "198.51.100.9");
    expect(await trySignIn("tilda@saltbush.example", password, minutes(1), "198.51.100.9")).toMatchObject({
      ok: false,
    });
    expect(await trySignIn("tilda@saltbush.example", password, minutes(1), "198.51.100.10")).toMatchObject({
      ok: true,
    });
  });
});

describe("changing the password", () => {
  test("asks for the present one, wants twelve characters, and ends the sessions under the old one", async () => {
    const before = await trial.as("desk");
    expect(
      (await trial.refused("desk", changePassword, { present: "wrong", next: "a longer secret" })).code,
    ).toBe("password-wrong");
    expect(
      (await trial.refused("desk", changePassword, { present: password, next: "short" })).sentence,
    ).toMatch(/12 characters/);
    expect((await trial.refused("desk", changePassword, { present: password, next: password })).code).toBe(
      "password-same",
    );
    await trial.done("desk", changePassword, { present: password, next: "a much longer secret" });
    expect(await perform(before, whoAmI, {})).toMatchObject({ ok: false, refusal: { code: "session-over" } });
    expect(await trySignIn("noor@saltbush.example", password, minutes(60))).toMatchObject({ ok: false });
    expect(await trySignIn("noor@saltbush.example", "a much longer secret", minutes(60))).toMatchObject({
      ok: true,
    });
  });
});
