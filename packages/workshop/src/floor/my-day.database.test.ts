import { describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { demoWorkshop } from "../testing/demo-workshop";
import { myDay } from "./my-day";

const trial = demoWorkshop();

const idOf = async (name: string) => {
  const [row] = await trial.sql("select id from person where name = $1", [name]);
  return String(row?.id);
};

describe("my day", () => {
  test("shows what is booked for me today, where the vehicle stands and what is next", async () => {
    const day = await trial.done("technician", myDay, {});
    expect(day).toMatchObject({ isOwn: true, today: "2026-11-25", timeZone: "Australia/Adelaide" });
    const job = day.booked.find(({ plate }) => plate === "7SV 5NB");
    expect(job).toMatchObject({ stands: "Hoist 1", statusWords: "in work" });
    expect(job?.next.words).not.toBe("");
    expect(job?.steps.done).toBeGreaterThan(0);
    expect(day.others.map(({ id }) => id)).not.toContain(job?.id);
  });

  test("begins and ends at midnight of the workshop's own zone", async () => {
    const at = new Date("2026-11-25T13:29:00Z"); // 23:59 on 25 November in Adelaide
    expect((await trial.done("technician", myDay, {}, at)).today).toBe("2026-11-25");
    const after = await trial.done("technician", myDay, {}, new Date("2026-11-25T13:30:00Z"));
    expect(after.today).toBe("2026-11-26");
    expect(after.booked.find(({ plate }) => plate === "7SV 5NB")?.today[0]?.work).toBe(
      "Blower, cooler and fuel pump: apart",
    );
  });

  test("of somebody else is shown to a manager only", async () => {
    const personId = await idOf("Joss Varga");
    const seen = await trial.done("manager", myDay, { personId });
    expect(seen).toMatchObject({ isOwn: false, person: { name: "Joss Varga" } });
    expect(seen.people.map(({ name }) => name)).toContain("Tilda Brennock");
    expect((await trial.refused("technician", myDay, { personId })).code).toBe("day-of-another");
    expect((await trial.refused("manager", myDay, { personId: newId() })).code).toBe("person-not-found");
  });

  test("of a person of another workshop is not found", async () => {
    expect((await trial.refused("manager", myDay, { personId: await idOf("Samir Qadan") })).code).toBe(
      "person-not-found",
    );
  });
});
