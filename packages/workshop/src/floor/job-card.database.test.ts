import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { perform } from "../core/perform";
import { acceptedJob } from "../testing/accepted-job";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { floorCard } from "../testing/floor-card";
import { clearFault, raiseFault } from "./faults";
import { readCard } from "./read-card";
import { recordStep } from "./record-step";
import { reopenStep } from "./reopen-step";
import { signHoldPoint } from "./sign-hold-point";

const trial = demoWorkshop();
let jobId = "";
const { read, stepOf, photo, enter, workToHold } = floorCard(trial, () => jobId);
const password = "drive-gently-42";

// Each test has a vehicle of its own, just taken in: fuel pump and oil, with the access work they share.
beforeEach(async () => {
  ({ jobId } = await acceptedJob(trial, { items: ["hp-pump-upgrade", "oil-service"] }));
  await trial.sql("update job set status = 'checked_in' where id = $1", [jobId]);
});

async function sign(
  stepId: string,
  who: "joss" | "marek" | "tilda" | "noor",
  more: {
    readonly password?: string;
    readonly key?: string;
    readonly address?: string;
    readonly at?: Date;
  } = {},
) {
  const context = { ...(await trial.as("technician", more.at)), address: more.address ?? "192.0.2.50" };
  const input = { stepId, email: `${who}@saltbush.example`, password: more.password ?? password };
  return signHoldPoint(context, input, more.key ? { key: more.key } : {});
}

const code = (result: Awaited<ReturnType<typeof sign>>) => (result.ok ? "signed" : result.refusal.code);

describe("entering a step", () => {
  test("a figure outside its limits is not done, and with a note becomes a fault until it is entered again", async () => {
    const step = await stepOf(({ kind, state }) => kind === "torque" && state === "open");
    const outside = (step.high ?? 0) + 5;
    const hold = (await read()).steps.find((each) => each.kind === "holdPoint" && each.state === "open");
    expect(hold && hold.position > step.position).toBe(true);
    const refusal = await trial.refused("technician", recordStep, { stepId: step.id, value: outside });
    expect(refusal.code).toBe("outside-limits");
    expect(refusal.sentence).toContain(`${outside} N·m is outside`);
    expect((await read()).steps.find(({ id }) => id === step.id)?.state).toBe("open");

    const note = "Thread drags from the third turn.";
    await trial.done("technician", recordStep, { stepId: step.id, value: outside, note });
    const card = await read();
    expect(card.steps.find(({ id }) => id === step.id)?.state).toBe("outside");
    expect(card.faults[0]).toMatchObject({ stepId: step.id, clearedAt: null });
    expect(card.faults[0]?.sentence).toContain(note);

    await trial.done("technician", recordStep, { stepId: step.id, value: step.target ?? step.low });
    const after = await read();
    expect(after.steps.find(({ id }) => id === step.id)?.state).toBe("done");
    expect(after.faults[0]?.clearedBecause).toContain("within limits");
  });

  test("a figure on its limit is within it", async () => {
    const step = await stepOf(({ kind, state }) => kind === "torque" && state === "open");
    await trial.done("technician", recordStep, { stepId: step.id, value: step.high });
    expect((await read()).steps.find(({ id }) => id === step.id)).toMatchObject({
      state: "done",
      entered: { withinLimits: true, value: step.high, by: { name: "Tilda Brennock" } },
    });
  });

  test("asks for what the step is about: a figure, a serial number, a photo", async () => {
    const torque = await stepOf(({ kind }) => kind === "torque");
    expect((await trial.refused("technician", recordStep, { stepId: torque.id })).code).toBe("value-missing");
    const sentence = (await trial.refused("technician", recordStep, { stepId: torque.id, value: "24,5" }))
      .sentence;
    expect(sentence).toMatch(/in digits, such as 24\.5/);
    for (const kind of ["serial", "photo"]) {
      const step = await stepOf((each) => each.kind === kind);
      expect((await trial.refused("technician", recordStep, { stepId: step.id })).code).toBe(
        `${kind}-missing`,
      );
    }
  });

  test("a photo joins another on the same step", async () => {
    const step = await stepOf(({ kind }) => kind === "photo");
    await enter(step);
    await enter(step);
    expect((await read()).steps.find(({ id }) => id === step.id)?.photos).toHaveLength(2);
  });

  test("a photo that never arrived is not entered", async () => {
    const step = await stepOf(({ state, kind }) => state === "open" && kind === "tick");
    const refusal = await trial.refused("technician", recordStep, {
      stepId: step.id,
      photoSha256: "0".repeat(64),
    });
    expect(refusal.code).toBe("photo-not-kept");
  });

  test("the same entry sent twice is entered once and answered the same", async () => {
    const step = await stepOf(({ state, kind }) => state === "open" && kind !== "holdPoint");
    const context = await trial.as("technician");
    const input = {
      stepId: step.id,
      ...(step.kind === "torque" || step.kind === "measurement" ? { value: step.target ?? step.low } : {}),
      ...(step.kind === "serial" ? { serial: "SN-77" } : {}),
      ...(step.kind === "photo" ? { photoSha256: await photo() } : {}),
      at: demoNow.toISOString(),
    };
    const key = randomUUID();
    const [first, second] = await Promise.all([
      perform(context, recordStep, input, { key }),
      perform(context, recordStep, input, { key }),
    ]);
    expect(first).toMatchObject({ ok: true });
    expect(second).toEqual(first);
    const rows = await trial.sql("select id from step_entry where step_id = $1", [step.id]);
    expect(rows).toHaveLength(1);
  });

  test("a step that somebody has entered is not entered over", async () => {
    const step = await stepOf(({ state, kind }) => state === "open" && kind === "tick");
    await enter(step);
    const refusal = await trial.refused("otherTechnician", recordStep, { stepId: step.id });
    expect(refusal).toMatchObject({ code: "already-entered" });
    expect(refusal.sentence).toMatch(/Tilda Brennock has already entered/);
  });

  test("a device whose clock runs ahead enters nothing in the future", async () => {
    const step = await stepOf(({ state, kind }) => state === "open" && kind === "tick");
    await trial.done("technician", recordStep, { stepId: step.id, at: "2031-01-01T00:00:00Z" });
    expect((await read()).steps.find(({ id }) => id === step.id)?.entered?.at).toEqual(demoNow);
  });

  test("the front desk and the owner enter nothing", async () => {
    const step = await stepOf(({ state }) => state === "open");
    for (const part of ["desk", "owner"] as const)
      expect((await trial.refused(part, recordStep, { stepId: step.id })).code).toBe("not-allowed");
  });

  test("another workshop finds neither the step nor the card", async () => {
    const step = await stepOf(({ state }) => state === "open");
    await trial.sql("update person set roles = '{manager}' where email = 'samir@gulfboost.example'");
    expect((await trial.refused("gulfOwner", recordStep, { stepId: step.id })).code).toBe("step-not-found");
    expect((await trial.refused("gulfOwner", reopenStep, { stepId: step.id })).code).toBe("step-not-found");
    expect((await trial.refused("gulfOwner", readCard, { jobId })).code).toBe("job-not-found");
    const fault = { jobId, sentence: "Something is loose." };
    expect((await trial.refused("gulfOwner", raiseFault, fault)).code).toBe("job-not-found");
  });

  test("nothing is entered while the vehicle is not here", async () => {
    const step = await stepOf(({ state }) => state === "open");
    await trial.sql("update job set status = 'booked' where id = $1", [jobId]);
    expect((await trial.refused("technician", recordStep, { stepId: step.id })).code).toBe(
      "not-in-the-building",
    );
    await trial.sql("update job set status = 'checked_in' where id = $1", [jobId]);
    await enter(await stepOf(({ state, kind }) => state === "open" && kind !== "holdPoint"));
    expect((await read()).status).toBe("inWork");
  });

  test("the record itself is never changed", async () => {
    await expect(trial.sql("update step_entry set value = 1")).rejects.toThrow(/append_only/);
    await expect(trial.sql("delete from step_entry")).rejects.toThrow(/append_only/);
  });
});

describe("a hold point", () => {
  test("nothing crosses it before it is signed", async () => {
    const card = await read();
    const hold = card.steps.find(({ kind, state }) => kind === "holdPoint" && state === "open");
    const after = card.steps.find(
      ({ position, kind }) => position > (hold?.position ?? 0) && kind !== "holdPoint",
    );
    const refusal = await trial.refused("technician", recordStep, { stepId: after?.id });
    expect(refusal).toMatchObject({ code: "held", data: { hold: hold?.text } });
  });

  test("is not ticked off like a step", async () => {
    const hold = await stepOf(({ kind, state }) => kind === "holdPoint" && state === "open");
    expect((await trial.refused("technician", recordStep, { stepId: hold.id })).code).toBe(
      "hold-needs-second-person",
    );
  });

  test("is not signed before every step above it is done", async () => {
    const hold = await stepOf(({ kind, state }) => kind === "holdPoint" && state === "open");
    const open = (await read()).steps.find(
      ({ state, position }) => state === "open" && position < hold.position,
    );
    const result = await sign(hold.id, "marek");
    expect(code(result)).toBe("hold-not-ready");
    expect(JSON.stringify(result)).toContain(`Not done: ${open?.operationName}`);
  });

  test("is signed by a second person, on the device of the first", async () => {
    const hold = await workToHold();
    expect(code(await sign(hold.id, "tilda"))).toBe("signer-did-the-work");
    expect(code(await sign(hold.id, "joss", { password: "guessed" }))).toBe("sign-in-failed");
    await trial.sql("update person set skills = '{stores}' where name = 'Joss Varga'");
    expect(code(await sign(hold.id, "joss"))).toBe("signer-without-skill");
    expect(code(await sign(hold.id, "noor"))).toBe("not-allowed");
    await trial.sql("update person set skills = '{stores,second-signatory}' where name = 'Joss Varga'");
    const key = randomUUID();
    const first = await sign(hold.id, "joss", { key });
    expect(first).toMatchObject({ ok: true, value: { signedBy: "Joss Varga" } });
    expect(await sign(hold.id, "joss", { key })).toEqual(first);
    expect(code(await sign(hold.id, "marek"))).toBe("already-entered");
    const signed = (await read()).steps.find(({ id }) => id === hold.id);
    expect(signed).toMatchObject({ state: "done", entered: { kind: "signed", by: { name: "Joss Varga" } } });
    const [audit] = await trial.sql(
      "select actor_name from audit_event where use_case = 'floor.sign-hold-point' and entity_id = $1",
      [hold.id],
    );
    expect(audit).toEqual({ actor_name: "Joss Varga" });
  });

  test("is not signed by somebody of another workshop", async () => {
    const hold = await workToHold();
    const result = await signHoldPoint(await trial.as("technician"), {
      stepId: hold.id,
      email: "samir@gulfboost.example",
      password,
    });
    expect(result).toMatchObject({ ok: false, refusal: { code: "sign-in-failed", field: "email" } });
  });

  test("counts wrong passwords as signing in does", async () => {
    const hold = await workToHold();
    const minutes = (count: number) => new Date(demoNow.getTime() + count * 60_000);
    for (let tries = 0; tries < 5; tries += 1)
      await sign(hold.id, "marek", { password: "wrong", address: `192.0.2.${60 + tries}`, at: minutes(1) });
    const address = "192.0.2.70";
    expect(code(await sign(hold.id, "marek", { address, at: minutes(2) }))).toBe("sign-in-failed");
    expect(code(await sign(hold.id, "marek", { address, at: minutes(17) }))).toBe("signed");
  });

  test("is not signed over a fault that a manager has not settled", async () => {
    const hold = await workToHold();
    const step = (await read()).steps.findLast(({ position }) => position < hold.position);
    const { faultId } = await trial.done("technician", raiseFault, {
      jobId,
      stepId: step?.id,
      sentence: "A fuel joint is damp.",
    });
    expect(JSON.stringify(await sign(hold.id, "joss"))).toContain("Fault not settled: A fuel joint is damp.");
    const settled = { faultId, because: "Joint remade and dry after an hour." };
    expect((await trial.refused("technician", clearFault, settled)).code).toBe("clear-needs-manager");
    expect((await trial.refused("manager", clearFault, { faultId, because: "ok" })).sentence).toMatch(
      /at least 10 characters/,
    );
    await trial.done("manager", clearFault, settled);
    expect((await trial.refused("manager", clearFault, settled)).code).toBe("fault-cleared");
    expect((await trial.refused("manager", clearFault, { ...settled, faultId: newId() })).code).toBe(
      "fault-not-found",
    );
    expect(code(await sign(hold.id, "joss"))).toBe("signed");
  });

  test("falls when a step before it is opened again, and says why", async () => {
    const hold = await workToHold();
    await sign(hold.id, "joss");
    const step = (await read()).steps.findLast(({ position }) => position < hold.position);
    expect((await trial.refused("technician", reopenStep, { stepId: step?.id })).code).toBe("reopen-reason");
    const because = "The pipe was loosened again.";
    const undone = await trial.done("technician", reopenStep, { stepId: step?.id, because });
    expect(undone.signaturesFallen).toEqual([hold.text]);
    const after = (await read()).steps;
    expect(after.find(({ id }) => id === hold.id)?.state).toBe("open");
    expect(after.find(({ id }) => id === step?.id)?.state).toBe("open");
    expect((await trial.refused("technician", reopenStep, { stepId: step?.id })).code).toBe(
      "nothing-to-undo",
    );
  });

  test("of the licensed signatory asks for the name on the licence", async () => {
    const hold = await workToHold();
    await trial.sql("update job_step set signer = 'signatory' where id = $1", [hold.id]);
    expect(code(await sign(hold.id, "joss"))).toBe("signatory-missing");
    const context = await trial.as("technician");
    const email = "joss@saltbush.example";
    const signed = await signHoldPoint(context, {
      stepId: hold.id,
      email,
      password,
      signatoryName: "R. Amsel",
    });
    expect(signed).toMatchObject({ ok: true });
    expect((await read()).steps.find(({ id }) => id === hold.id)?.entered?.text).toContain("R. Amsel");
  });

  test("a step is no hold point, and a stranger's step is none of ours", async () => {
    const step = await stepOf(({ kind }) => kind === "tick");
    expect(code(await sign(step.id, "joss"))).toBe("not-a-hold-point");
    expect(code(await sign(newId(), "joss"))).toBe("step-not-found");
  });
});

describe("a fault", () => {
  test("is raised in a sentence, at a step of this card", async () => {
    expect((await trial.refused("technician", raiseFault, { jobId, sentence: "bad" })).sentence).toMatch(
      /Say in a sentence/,
    );
    const sentence = "The belt is cracked.";
    expect((await trial.refused("technician", raiseFault, { jobId, stepId: newId(), sentence })).code).toBe(
      "step-not-found",
    );
    const photoSha256 = "f".repeat(64);
    expect((await trial.refused("technician", raiseFault, { jobId, sentence, photoSha256 })).code).toBe(
      "photo-not-kept",
    );
    const at = new Date(demoNow.getTime() - 60_000);
    const found = { jobId, sentence, photoSha256: await photo(), at: at.toISOString() };
    await trial.done("technician", raiseFault, found);
    expect((await read()).faults[0]).toMatchObject({
      sentence,
      by: "Tilda Brennock",
      raisedAt: at,
      clearedAt: null,
    });
  });
});
