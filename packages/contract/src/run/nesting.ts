const DEEPEST = 100;

/** Whether a value is nested deeper than any sensible question; walked level by level, never recursively. */
export function isNestedTooDeep(value: unknown): boolean {
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > DEEPEST) return true;
    level = level.flatMap((each) => (typeof each === "object" && each !== null ? Object.values(each) : []));
  }
  return false;
}
