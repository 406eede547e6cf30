import type { Refusal } from "@buildproof/workshop";
import { ErrorState } from "@/design/error-state";
import { Page } from "@/design/sheet";

/** A page that its reader may not see, or that cannot be shown now: why, and the way on. */
export function Refused({ refusal }: { readonly refusal: Refusal }) {
  return (
    <Page narrow>
      <ErrorState sentence={refusal.sentence} next={<a href="/">Go to your start page</a>} />
    </Page>
  );
}
