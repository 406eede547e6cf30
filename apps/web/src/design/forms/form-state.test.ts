import { describe, expect, test } from "vitest";
import { fieldSentences, refusalFromIssues, refusedForm, typedValues } from "./form-state";

function formOf(entries: readonly (readonly [string, string | Blob])[]): FormData {
  const form = new FormData();
  for (const [name, value] of entries) form.append(name, value);
  return form;
}

describe("what was typed", () => {
  test("comes back with a refusal, so that nothing is typed twice", () => {
    const state = refusedForm(
      { sentence: "Enter the odometer in whole kilometres.", field: "odometerKm" },
      formOf([
        ["plate", "1AB 2CD"],
        ["odometerKm", "24,31o"],
      ]),
    );
    expect(state).toMatchObject({ values: { plate: "1AB 2CD", odometerKm: "24,31o" } });
  });

  test("never carries a password or a file back to the browser", () => {
    const values = typedValues(
      formOf([
        ["email", "kim@saltbush.example"],
        ["newPassword", "correct horse"],
        ["photo", new Blob(["x"])],
        ["$ACTION_ID", "1"],
      ]),
    );
    expect(values).toEqual({ email: "kim@saltbush.example" });
  });

  test("keeps every tick of a group", () => {
    const values = typedValues(
      formOf([
        ["uses", "towing"],
        ["uses", "touring"],
      ]),
    );
    expect(values).toEqual({ uses: ["towing", "touring"] });
  });
});

test("a refusal about a field is shown at that field and beside its fellows", () => {
  const refusal = refusalFromIssues([
    { path: ["plate"], message: "Enter the plate." },
    { path: ["contact", "phone"], message: "Enter a telephone number." },
    { path: ["plate"], message: "A plate has letters or digits." },
  ]);
  expect(refusal.sentence).toBe("Enter the plate.");
  expect(fieldSentences(refusal)).toEqual({
    plate: "Enter the plate.",
    "contact.phone": "Enter a telephone number.",
  });
});
