export const themes = ["light", "dark", "device"] as const;
export type Theme = (typeof themes)[number];

export const THEME_COOKIE = "theme";

/** Reads the cookie; anything unknown means "as the device". */
export function themeFrom(cookie: string | undefined): Theme {
  return themes.find((theme) => theme === cookie) ?? "device";
}

/** What stands in `data-theme`: nothing, where the device decides. */
export function themeAttribute(theme: Theme): "light" | "dark" | undefined {
  return theme === "device" ? undefined : theme;
}
