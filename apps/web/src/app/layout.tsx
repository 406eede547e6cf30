import type { Metadata, Viewport } from "next";
import { cookies, headers } from "next/headers";
import type { ReactNode } from "react";
import { Providers } from "@/design/providers";
import { THEME_COOKIE, themeAttribute, themeFrom } from "@/shell/theme";
import "./globals.css";

export const metadata: Metadata = {
  title: { default: "Buildproof", template: "%s · Buildproof" },
  description: "Job and quote manager for workshops that upgrade vehicles",
  robots: { index: false, follow: false },
};

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#f5f6f2" },
    { media: "(prefers-color-scheme: dark)", color: "#0f1415" },
  ],
};

export default async function RootLayout({ children }: { readonly children: ReactNode }) {
  // Reading the request here is what makes every page drawn per request, as its nonce requires.
  const nonce = (await headers()).get("x-nonce");
  const theme = themeFrom((await cookies()).get(THEME_COOKIE)?.value);
  return (
    <html lang="en-AU" dir="ltr" data-theme={themeAttribute(theme)}>
      <head>{nonce && <meta property="csp-nonce" content={nonce} />}</head>
      <body>
        <Providers>{children}</Providers>
      </body>
    </html>
  );
}
