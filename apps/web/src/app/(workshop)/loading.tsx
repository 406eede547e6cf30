import { Loading } from "@/design/loading";
import { Page } from "@/design/sheet";

/**
 * Drawn inside the shell, so that the way to every other page stays open. There is none at the root: a page that
 * starts to arrive before it is known to exist can no longer answer 404, and a customer's link must.
 */
export default function LoadingPage() {
  return (
    <Page>
      <Loading />
    </Page>
  );
}
