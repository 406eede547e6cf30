const here = "http://here.invalid";

/** Where to go after signing in: a path of this site, never somebody else's address. */
export function wayBack(next: unknown): string {
  if (typeof next !== "string" || !next.startsWith("/") || !URL.canParse(next, here)) return "/";
  const { origin, pathname, search } = new URL(next, here);
  return origin === here && !pathname.startsWith("/sign-in") ? `${pathname}${search}` : "/";
}
