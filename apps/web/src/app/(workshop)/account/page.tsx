import { whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Page, Section, SheetHead } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { changePasswordAction } from "@/features/identity/actions";
import { SignOutEverywhere } from "@/features/identity/sign-out-everywhere";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Your account" };

export default async function AccountPage() {
  const loaded = await load(whoAmI, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { name, email, roles, skills } = loaded.value;
  return (
    <Page narrow>
      <SheetHead
        title={name}
        facts={[
          { label: "E-mail", value: email },
          { label: "Roles", value: roles.join(", ") },
          {
            label: "Skills",
            value: skills.length > 0 ? skills.join(", ").replaceAll("-", " ") : "none recorded",
          },
        ]}
      />
      <Section title="Change the password">
        <ActionForm action={changePasswordAction} label="Change the password">
          <TextField
            name="presentPassword"
            label="Present password"
            type="password"
            autoComplete="current-password"
            isRequired
          />
          <TextField
            name="nextPassword"
            label="New password"
            type="password"
            autoComplete="new-password"
            help="At least 12 characters. Every device has to sign in again afterwards."
            isRequired
          />
          <SubmitButton pendingLabel="Changing">Change the password</SubmitButton>
        </ActionForm>
      </Section>
      <Section title="Sign out everywhere">
        <p>Ends your sessions on every device, this one too: for a lost tablet, or a browser left open.</p>
        <div className="form-actions">
          <SignOutEverywhere />
        </div>
      </Section>
    </Page>
  );
}
