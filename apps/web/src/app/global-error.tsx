"use client";

import "./globals.css";

/** Stands in when even the layout failed, so it leans on nothing. */
export default function GlobalError({ error }: { readonly error: Error & { readonly digest?: string } }) {
  return (
    <html lang="en-AU">
      <body>
        <main className="page page-narrow">
          <h1>Buildproof could not draw this page</h1>
          <p>What was saved before is safe. Load the page again in a moment.</p>
          {error.digest && <p className="fine">Reference {error.digest}</p>}
        </main>
      </body>
    </html>
  );
}
