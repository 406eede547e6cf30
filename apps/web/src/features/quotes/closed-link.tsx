import { Density } from "@/design/density";
import { Page } from "@/design/sheet";
import { en } from "@/messages/en";

/** What a link that opens nothing shows: the same whether it never was, ran out, or was closed. */
export function ClosedLink() {
  return (
    <Density of="floor">
      <main id="content">
        <Page narrow>
          <h1>{en.closed.title}</h1>
          <p>{en.closed.sentence}</p>
          <p>{en.closed.next}</p>
        </Page>
      </main>
    </Density>
  );
}
