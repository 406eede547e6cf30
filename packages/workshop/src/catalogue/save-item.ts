import { z } from "zod";
import { systems } from "../builds/systems";
import { atField } from "../core/at-field";
import { revision } from "../core/revision";
import { readSite } from "../core/site";
import { command } from "../core/use-case";
import { typedAmount } from "../quotes/typed-amount";
import { codeFrom } from "./code-from";
import { findComponent } from "./components/components";
import { readFigures } from "./components/read-figures";
import { itemContent, itemKinds } from "./part-content";
import { refuseCatalogue } from "./refuse-catalogue";
import { partCode, writePart } from "./write-part";

const amount = z.string().trim().max(20, "Keep the amount under 20 characters.");
const count = (sentence: string) => z.number(sentence).int(sentence).min(0, sentence);
const text = (name: string, most: number) =>
  z.string().trim().max(most, `Keep the ${name} under ${most} characters.`);

/** Writes an item of a draft from its form: money, figures and counts as they are typed there. */
export const saveItem = command({
  name: "catalogue.save-item",
  permission: "catalogue:write",
  input: z.strictObject({
    versionId: z.uuid("Open the draft again."),
    revision,
    /** Empty for a new item that is named after what it is called. */
    code: z.union([z.literal(""), partCode]),
    isNew: z.boolean(),
    name: text("name", 120).min(1, "Give the item a name."),
    system: z.enum(
      systems.map(({ code }) => code),
      "Choose the system of the build sheet it stands under.",
    ),
    kind: z.enum(itemKinds, "Choose how it is bought and charged."),
    component: z.string(),
    maker: text("maker", 80),
    supplier: text("supplier", 80),
    note: text("note", 1_000),
    price: amount,
    cost: amount,
    leadDays: count("Lead days are a whole number, 0 or more."),
    massKg: z.number("The mass is a number of kilograms.").min(0, "A mass is not less than nothing."),
    warrantyMonths: count("Warranty months are a whole number, 0 or more."),
    returnable: z.boolean(),
    oneUse: z.boolean(),
    serialised: z.boolean(),
    /** By the path of the field. */
    figures: z.record(z.string(), z.string()),
    fits: z.array(z.string()),
    operations: z.array(z.string()),
  }),
  async run(work, input) {
    const { versionId, revision: seen, code, isNew, price, cost, figures, ...rest } = input;
    const { currency } = await readSite(work.tx);
    const priceMinor = typedAmount(price, currency);
    if (priceMinor === null) return atField("price", refuseCatalogue("amount-wrong"));
    const costMinor = typedAmount(cost, currency);
    if (costMinor === null) return atField("cost", refuseCatalogue("amount-wrong"));
    const component = findComponent(input.component);
    if (!component) return atField("component", refuseCatalogue("component-unknown"));
    const read = readFigures(component, figures);
    if ("faults" in read) {
      const [first] = read.faults;
      const points = read.faults.map(({ sentence }) => sentence);
      return atField(`figures.${first?.path}`, refuseCatalogue("figures-wrong", { points }));
    }
    const after = itemContent.parse({
      ...rest,
      figures: read.figures,
      priceMinor: Number(priceMinor),
      costMinor: Number(costMinor),
      position: 0,
    });
    return writePart(work, {
      versionId,
      revision: seen,
      part: "item",
      code: code || codeFrom(input.name),
      isNew,
      after,
    });
  },
});
