import { type CurrencyCode, decimalAmount, minorUnits } from "@buildproof/units";
import {
  type ContentOf,
  components,
  type editPart,
  itemKinds,
  typedFigures,
  type ValueOf,
} from "@buildproof/workshop";
import { ItemForm, type ItemToEdit } from "./item-form";
import { RuleForm, type RuleToEdit } from "./rule-form";
import { AccessForm, GroupForm, OperationForm } from "./work-forms";

type Edited = ValueOf<typeof editPart>;

/** The form of a part, by what it is. */
export function PartForm({ edited }: { readonly edited: Edited }) {
  const { version, part, code, content } = edited;
  const at = { version, code };
  // The content is that of the part it was read as.
  if (part === "group")
    return <GroupForm {...at} content={content as ContentOf<"group"> | null} choices={edited.items} />;
  if (part === "operation")
    return (
      <OperationForm {...at} content={content as ContentOf<"operation"> | null} choices={edited.access} />
    );
  if (part === "access")
    return <AccessForm {...at} content={content as ContentOf<"access"> | null} choices={edited.access} />;
  if (part === "rule")
    return <RuleForm {...at} rule={ruleToEdit(content as ContentOf<"rule"> | null)} choices={edited} />;
  return (
    <ItemForm
      {...at}
      item={itemToEdit(content as ContentOf<"item"> | null, edited.currency)}
      currency={edited.currency}
      systems={edited.systems}
      kinds={itemKinds}
      components={components.map((component) => ({
        ...component,
        fields: component.fields.map(shownFigure),
      }))}
      models={edited.models}
      operations={edited.operations}
    />
  );
}

function shownFigure(field: (typeof components)[number]["fields"][number]) {
  const { path, label, unit, kind, isRequired, help } = field;
  return { path, label, unit, kind, isRequired, help, choices: field.kind === "choice" ? field.choices : [] };
}

const newItem: Omit<ItemToEdit, "typed" | "price" | "cost"> = {
  name: "",
  system: "",
  kind: "part",
  component: "",
  maker: "",
  supplier: "",
  note: "",
  leadDays: 0,
  massKg: 0,
  warrantyMonths: 12,
  returnable: true,
  oneUse: false,
  serialised: false,
  fits: [],
  operations: [],
};

function itemToEdit(item: ContentOf<"item"> | null, currency: CurrencyCode): ItemToEdit {
  if (!item) return { ...newItem, typed: {}, price: "", cost: "" };
  const component = components.find(({ code }) => code === item.component);
  return {
    ...item,
    typed: component ? typedFigures(component, item.figures) : {},
    price: decimalAmount(minorUnits(item.priceMinor), currency),
    cost: decimalAmount(minorUnits(item.costMinor), currency),
  };
}

const noCapacity = { quantity: "", unit: "", link: "", baseFact: "", reservePct: "0", amounts: [] };

function ruleToEdit(rule: ContentOf<"rule"> | null): RuleToEdit {
  if (!rule)
    return {
      kind: "needs",
      when: null,
      what: null,
      capacity: noCapacity,
      because: "",
      source: "common practice, no source",
      safety: false,
      models: [],
    };
  const { because, source, safety, models } = rule;
  const head = { because, source, safety, models };
  if (rule.kind !== "capacity")
    return {
      ...head,
      kind: rule.kind,
      when: asText(rule.when),
      what: asText(rule.then),
      capacity: noCapacity,
    };
  const { quantity, unit, link, baseFact, reservePct } = rule;
  const amounts = (["demand", "supply"] as const).flatMap((side) =>
    Object.entries(rule[side]).map(([item, amount]) => ({
      item,
      side,
      amount: String(typeof amount === "number" ? amount : amount.whole),
      replaces: typeof amount !== "number",
    })),
  );
  const capacity = { quantity, unit, link, baseFact, reservePct: String(reservePct), amounts };
  return { ...head, kind: "capacity", when: null, what: null, capacity };
}

/** A condition as it is sent: its figures are text there. */
function asText(condition: unknown): RuleToEdit["when"] {
  if (condition === null || condition === undefined) return null;
  return JSON.parse(JSON.stringify(condition), (key, value) =>
    key === "atLeast" && typeof value === "number" ? String(value) : value,
  );
}
