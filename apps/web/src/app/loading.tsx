import { Loading } from "@/design/loading";
import { Page } from "@/design/sheet";

export default function LoadingPage() {
  return (
    <Page>
      <Loading />
    </Page>
  );
}
