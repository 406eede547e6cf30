import { ButtonLink } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { Page } from "@/design/sheet";

/** An address that leads nowhere, or to something this person may not see: the answer is the same. */
export function NothingHere() {
  return (
    <Page narrow>
      <h1>There is nothing at this address</h1>
      <EmptyState
        sentence="It may have been moved, or the link was cut short. Check the address, or find the vehicle, quote or job by the search field."
        action={
          <ButtonLink variant="primary" href="/">
            To the start
          </ButtonLink>
        }
      />
    </Page>
  );
}
