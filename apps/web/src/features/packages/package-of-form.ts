import { numberOf, orNull, textOf, ticksOf } from "@/server/form-entries";

/** What was typed about a package, for the use case to judge. */
export function packageOfForm(form: FormData) {
  return {
    name: textOf(form, "name"),
    outcome: textOf(form, "outcome").trim(),
    models: [...ticksOf(form, "models")],
    items: [...ticksOf(form, "items")],
    choices: ticksOf(form, "choiceIds").map((id) => ({
      name: textOf(form, `choice.${id}.name`).trim(),
      // What is none of the three is for the use case to refuse.
      pick: textOf(form, `choice.${id}.pick`) as "exactly-one" | "at-most-one" | "at-least-one",
      items: [...ticksOf(form, `choice.${id}.items`)],
    })),
    options: [...ticksOf(form, "options")],
    promise: promiseOf(form),
    assumptions: linesOf(form, "assumptions"),
    exclusions: linesOf(form, "exclusions"),
    cautions: linesOf(form, "cautions"),
  };
}

function linesOf(form: FormData, name: string): string[] {
  return textOf(form, name)
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");
}

function promiseOf(form: FormData) {
  const given = (name: string) => orNull(form, name, numberOf);
  const { lowKw, highKw, boostKPa, towKg } = {
    lowKw: given("lowKw"),
    highKw: given("highKw"),
    boostKPa: given("boostKPa"),
    towKg: given("towKg"),
  };
  if (lowKw === null && highKw === null && boostKPa === null) return towKg === null ? null : { towKg };
  return {
    at: "hubs" as const,
    // What is missing is for the use case to refuse.
    lowKw: lowKw ?? Number.NaN,
    highKw: highKw ?? Number.NaN,
    referenceCondition: textOf(form, "referenceCondition"),
    remedy: textOf(form, "remedy"),
    ...(boostKPa === null ? {} : { boostKPa }),
    ...(towKg === null ? {} : { towKg }),
  };
}
