import type { z } from "zod";
import type { CalculationError } from "./calculation-error";

type Issue = z.core.$ZodIssue;

/** The first thing wrong with an input, as one error that names the field and says what to do. */
export function issueError(issues: readonly Issue[], input: unknown): CalculationError {
  const telling = issues.map(mostTelling);
  // A misspelt field is both unknown and missing; the name that was written says more.
  const issue = telling.find(({ code }) => code === "unrecognized_keys") ?? telling[0];
  if (!issue) return { code: "invalid-field", message: "The input is not understood.", path: "" };
  if (issue.code === "unrecognized_keys") {
    const path = pathText([...issue.path, ...issue.keys.slice(0, 1)]);
    return { code: "unknown-field", message: `Unknown field ${path}: remove it or correct its name.`, path };
  }
  const path = pathText(issue.path);
  if (path !== "" && valueAt(input, issue.path) === undefined) {
    return { code: "missing-field", message: `The field ${path} is missing: add it.`, path };
  }
  const subject = path === "" ? "The input" : `The field ${path}`;
  return { code: "invalid-field", message: `${subject}${complaint(issue)}.`, path };
}

const KINDS: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "an object",
  record: "an object",
};

function complaint(issue: Issue): string {
  if (issue.code === "invalid_type" && issue.message.startsWith("Invalid input")) {
    return ` must be ${KINDS[issue.expected] ?? issue.expected}`;
  }
  return `: ${issue.message.charAt(0).toLowerCase()}${issue.message.slice(1)}`;
}

/** Of the ways a choice of forms can fail, the one that came closest; nested choices likewise. */
function mostTelling(issue: Issue): Issue {
  if (issue.code !== "invalid_union" || issue.errors.length === 0) return issue;
  if (!issue.errors.some((branch) => branch.every(isWithin))) return issue;
  const [closest] = issue.errors
    .filter((branch) => branch.length > 0)
    .toSorted((a, b) => a.length - b.length || deepest(b) - deepest(a));
  const [first] = closest ?? [];
  if (!first) return issue;
  return mostTelling({ ...first, path: [...issue.path, ...first.path] });
}

/** Whether an issue is about a part of the value, and not about the kind of value itself. */
function isWithin(issue: Issue): boolean {
  return issue.path.length > 0 || issue.code === "unrecognized_keys";
}

function deepest(branch: readonly Issue[]): number {
  return Math.max(...branch.map(({ path }) => path.length));
}

function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === "number") return `${text}[${key}]`;
    return text === "" ? String(key) : `${text}.${String(key)}`;
  }, "");
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((value, key) => {
    if (typeof value !== "object" || value === null) return undefined;
    return Object.getOwnPropertyDescriptor(value, key)?.value;
  }, input);
}
