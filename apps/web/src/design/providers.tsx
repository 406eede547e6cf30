"use client";

import { useRouter } from "next/navigation";
import type { ReactNode } from "react";
import { I18nProvider, RouterProvider } from "react-aria-components";
import { Announcements } from "./toast";

interface ProvidersProps {
  readonly children: ReactNode;
  /** One locale for server and browser, or their first drawings differ. */
  readonly locale?: string;
}

/** What the controls need around them: the locale, the router, and a place for announcements. */
export function Providers({ children, locale = "en-AU" }: ProvidersProps) {
  const router = useRouter();
  return (
    <I18nProvider locale={locale}>
      <RouterProvider navigate={(href) => router.push(href)}>
        {children}
        <Announcements />
      </RouterProvider>
    </I18nProvider>
  );
}
