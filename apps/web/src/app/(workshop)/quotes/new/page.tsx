import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Page, SheetHead } from "@/design/sheet";
import { QuoteBuildForm } from "@/features/quotes/version-forms";

export const metadata: Metadata = { title: "New quote" };

interface NewQuotePageProps {
  readonly searchParams: Promise<{ readonly build?: string }>;
}

/** Where a build's "quote" link leads: one press, so that looking at an address never makes a quote. */
export default async function NewQuotePage({ searchParams }: NewQuotePageProps) {
  const { build } = await searchParams;
  if (!build || !/^[0-9a-f-]{36}$/i.test(build)) notFound();
  return (
    <Page narrow>
      <SheetHead
        title="Quote a build"
        lead="The draft takes the build's items at today's prices, with the labour they share counted once. You can change it before it is issued."
      />
      <QuoteBuildForm buildId={build} />
    </Page>
  );
}
