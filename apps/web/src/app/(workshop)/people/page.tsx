import { listPeople } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { RuledTable } from "@/design/ruled-table";
import { Columns, Page, Section, SheetHead } from "@/design/sheet";
import { AddPersonForm } from "@/features/identity/add-person-form";
import { DutyFields } from "@/features/identity/duty-fields";
import { roleWords, skillInWords } from "@/features/identity/duty-words";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "People" };

export default async function PeoplePage() {
  const loaded = await load(listPeople, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const people = loaded.value;
  const active = people.filter((person) => person.active).length;
  return (
    <Page>
      <SheetHead
        title="People"
        lead={
          <>
            {active} {active === 1 ? "person" : "people"} can sign in. A person's record stays when they
            leave: it is in the history of jobs. Programs use tokens instead, under{" "}
            <Link href="/settings">Settings</Link>.
          </>
        }
      />
      <Columns>
        <Section title="Who works here">
          <RuledTable
            caption="People of the workshop"
            isCaptionHidden
            columns={[
              { id: "name", title: "Name" },
              { id: "roles", title: "Roles" },
              { id: "state", title: "Sign-in" },
              { id: "skills", title: "Skills" },
              { id: "email", title: "Signs in as" },
            ]}
            rows={people.map((person) => ({
              id: person.id,
              cells: {
                name: <Link href={`/people/${person.id}`}>{person.name}</Link>,
                email: person.email,
                roles: person.roles.map((role) => roleWords[role]).join(", "),
                skills: person.skills.map(skillInWords).join(", ") || "none",
                state: person.active ? (person.isMe ? "yours" : "active") : "deactivated",
              },
            }))}
          />
        </Section>
        <Section title="Add a person">
          <AddPersonForm>
            <DutyFields />
          </AddPersonForm>
        </Section>
      </Columns>
    </Page>
  );
}
