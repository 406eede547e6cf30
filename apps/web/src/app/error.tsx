"use client";

import { Button } from "@/design/button";
import { ErrorState } from "@/design/error-state";
import { Page } from "@/design/sheet";

interface ErrorPageProps {
  readonly error: Error & { readonly digest?: string };
  readonly reset: () => void;
}

/** A page that failed: said plainly, with a way on. */
export default function ErrorPage({ error, reset }: ErrorPageProps) {
  return (
    <Page narrow>
      <h1>This page could not be drawn</h1>
      <ErrorState
        sentence="Something failed at the workshop's end. What was saved before is safe."
        next="Try again. If it fails a second time, give the reference to whoever looks after the system."
        reference={error.digest}
        action={
          <Button variant="primary" onPress={reset}>
            Try again
          </Button>
        }
      />
    </Page>
  );
}
