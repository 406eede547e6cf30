const DEEPEST = 100;

/**
 * What no question may contain, whatever it asks: deeper nesting than any sensible one, or the one
 * field name that copying an object loses. Walked level by level, never recursively.
 */
export function shapeProblem(value: unknown): string | null {
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > DEEPEST) return `The input is nested too deep: at most ${DEEPEST} levels.`;
    const objects = level.filter((each) => typeof each === "object" && each !== null);
    if (objects.some((each) => Object.hasOwn(each, "__proto__"))) {
      return 'The name "__proto__" cannot be used: choose another.';
    }
    level = objects.flatMap((each) => Object.values(each));
  }
  return null;
}
