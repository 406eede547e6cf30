"use client";

import { THEME_COOKIE, type Theme, themeAttribute } from "./theme";

const ONE_YEAR_IN_SECONDS = 31_536_000;

/** Changes the look at once, and for the pages to come: a cookie, so that the server draws it right the first time. */
export function chooseTheme(theme: Theme): void {
  // biome-ignore lint/suspicious/noDocumentCookie: the cookie store interface is missing on older tablets and on plain http.
  document.cookie = `${THEME_COOKIE}=${theme}; path=/; max-age=${ONE_YEAR_IN_SECONDS}; samesite=lax`;
  const attribute = themeAttribute(theme);
  if (attribute === undefined) delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = attribute;
}
