import { editPart, partKinds } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Page, SheetHead } from "@/design/sheet";
import { removePartAction } from "@/features/catalogue/actions";
import { newPart, onePart } from "@/features/catalogue/catalogue-words";
import { DraftFields } from "@/features/catalogue/draft-fields";
import { PartForm } from "@/features/catalogue/part-form";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Change the catalogue" };

interface EditPartPageProps {
  readonly params: Promise<{ readonly id: string; readonly part: string; readonly code: string }>;
}

export default async function EditPartPage({ params }: EditPartPageProps) {
  const asked = await params;
  const part = partKinds.find((known) => known === asked.part);
  if (!part || part === "package") notFound();
  const code = asked.code === newPart ? null : asked.code;
  const loaded = await load(editPart, { versionId: asked.id, part, code });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { version, content } = loaded.value;
  return (
    <Page>
      <SheetHead
        title={
          code === null
            ? `New ${onePart[part]}`
            : content && "name" in content
              ? content.name
              : `The ${onePart[part]}`
        }
        lead={
          <>
            In the draft <Link href={`/catalogue/versions/${version.id}`}>{version.title}</Link>. Nothing is
            sold from it until it is published.
          </>
        }
        actions={
          code !== null &&
          content && (
            <ActionForm action={removePartAction} label={`Take the ${onePart[part]} out`}>
              <DraftFields version={version} part={part} code={code} />
              <SubmitButton variant="quiet" pendingLabel="Taking it out">
                Take it out of the catalogue
              </SubmitButton>
            </ActionForm>
          )
        }
      />
      <PartForm edited={loaded.value} />
    </Page>
  );
}
