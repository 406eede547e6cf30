import { Notice } from "@/design/notice";
import { Page, SheetHead } from "@/design/sheet";

/** Said to whoever may not see what packages cost. */
export function WritersOnly() {
  return (
    <Page>
      <SheetHead title="Packages" />
      <Notice title="For manager and owner">
        <p>What packages cost and earn is for manager and owner. Ask one of them to change a package.</p>
      </Notice>
    </Page>
  );
}
