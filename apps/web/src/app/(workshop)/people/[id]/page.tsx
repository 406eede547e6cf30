import { getPerson, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { Checkbox } from "@/design/checkbox";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Moment } from "@/design/moment";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { DutyFields } from "@/features/identity/duty-fields";
import { roleWords } from "@/features/identity/duty-words";
import {
  changePersonAction,
  endSessionsAction,
  givePasswordAction,
} from "@/features/identity/people-actions";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "A person" };

export default async function PersonPage({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  const loaded = await load(getPerson, { personId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  const person = loaded.value;
  const hidden = <input type="hidden" name="personId" value={person.id} />;
  return (
    <Page>
      <SheetHead
        title={person.name}
        lead={<Link href="/people">All people</Link>}
        facts={[
          { label: "Signs in as", value: person.email },
          { label: "Roles", value: person.roles.map((role) => roleWords[role]).join(", ") },
          { label: "Sign-in", value: person.active ? "active" : "deactivated" },
          {
            label: "Here since",
            value: <Moment at={person.createdAt} timeZone={me.value.timeZone} form="day" />,
          },
        ]}
      />
      <Columns>
        <Section title="Roles, skills, sign-in">
          <ActionForm action={changePersonAction} label="Roles, skills, sign-in">
            {hidden}
            <DutyFields roles={person.roles} skills={person.skills} />
            <Checkbox
              name="active"
              label="May sign in"
              note="Without the tick the person is signed out at once and cannot sign in; the record stays."
              defaultSelected={person.active}
            />
            <SubmitButton pendingLabel="Saving">Save</SubmitButton>
          </ActionForm>
        </Section>
        <Stack>
          <Section title="Sessions">
            <p>
              {person.isMe
                ? "Ends your own sessions on every device, this one too."
                : "For a lost tablet: every device that is signed in as this person has to sign in again."}
            </p>
            <ActionForm action={endSessionsAction} label="Sessions">
              {hidden}
              <SubmitButton variant="quiet" pendingLabel="Ending">
                End every session
              </SubmitButton>
            </ActionForm>
          </Section>
          {!person.isMe && (
            <Section title="A new password">
              <ActionForm action={givePasswordAction} label="A new password" resetOnSaved>
                {hidden}
                <TextField
                  name="newPassword"
                  label="New password"
                  type="password"
                  autoComplete="new-password"
                  help="For somebody who has lost theirs. At least 12 characters; the person changes it under Account."
                  isRequired
                />
                <SubmitButton variant="quiet" pendingLabel="Setting">
                  Set the new password
                </SubmitButton>
              </ActionForm>
            </Section>
          )}
        </Stack>
      </Columns>
    </Page>
  );
}
