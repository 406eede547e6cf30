import type { FigureField } from "./figure-field";

type Read<Value> = { readonly value: Value } | { readonly fault: string };
type Figure = number | string | readonly number[] | readonly Readonly<Record<string, number>>[];
type Curve = Extract<FigureField, { readonly kind: "curve" }>;

/** What was typed into the field of a figure; the fault is one sentence that begins with its label. */
export function readFigure(field: FigureField, typed: string): Read<Figure> {
  switch (field.kind) {
    case "number":
      return readWithin(field, typed);
    case "curve":
      return readCurve(field, typed);
    case "list": {
      const read = typed.split(/[\s,;]+/).map((each) => readWithin(field, each));
      const values = read.flatMap((each) => ("value" in each ? [each.value] : []));
      if (values.length === read.length && values.every(Number.isInteger)) return { value: values };
      return { fault: `${field.label}: whole numbers from ${field.low} to ${field.high}, such as 1, 2, 3.` };
    }
    case "text":
      if (field.like.test(typed)) return { value: typed };
      return { fault: `${field.label}: write it like ${field.example}.` };
    case "choice":
      if (field.choices.some(({ code }) => code === typed)) return { value: typed };
      return {
        fault: `${field.label}: choose one of ${field.choices.map(({ name }) => name).join(", ")}.`,
      };
  }
}

type Limited = Pick<Curve, "label" | "unit" | "low" | "high">;

function readWithin({ label, unit, low, high }: Limited, typed: string): Read<number> {
  const plain = typed.replace(/[\s,](?=\d{3}(\D|$))/g, "").replace(/^\u2212/, "-");
  const value = /^-?\d+(\.\d+)?$/.test(plain) ? Number(plain) : Number.NaN;
  const ofUnit = unit ? ` ${unit}` : "";
  if (Number.isNaN(value)) return { fault: `${label}: a number such as ${low}${ofUnit} is needed here.` };
  if (value < low || value > high)
    return { fault: `${label}: between ${low} and ${high}${ofUnit}. Look at the unit.` };
  return { value };
}

function readCurve(field: Curve, typed: string): Read<Figure> {
  if (field.mayBeOne && !typed.includes(":")) return readWithin(field, typed);
  const points: Record<string, number>[] = [];
  for (const pair of typed.split(/[;\n]|,\s+|,(?=\d{4,}\s*:)/)) {
    const [over, value, ...more] = pair.split(":").map((part) => part.trim());
    const at = Number((over ?? "").replace(/,(?=\d{3}$)/, ""));
    if (over === "" || Number.isNaN(at) || value === undefined || more.length > 0)
      return { fault: pairs(field) };
    const read = readWithin(field, value);
    if ("fault" in read) return read;
    points.push({ [field.over]: at, [field.value]: read.value });
  }
  const isRising = points.every(
    (point, index) => index === 0 || Number(points[index - 1]?.[field.over]) < Number(point[field.over]),
  );
  if (!isRising) return { fault: `${field.label}: write the pairs in rising order, each once.` };
  if (points.length < 2 && !field.mayBeOne) return { fault: `${field.label}: two pairs or more are needed.` };
  return { value: points };
}

const pairs = ({ label }: Curve) => `${label}: write pairs with a colon, such as 1500: 0.74, 3000: 0.88.`;
