import type { Role } from "@buildproof/workshop";
import Link from "next/link";
import type { ReactNode } from "react";
import { FollowPage } from "./follow-page";
import { GlobalSearch } from "./global-search";
import { MainNavigation, PhoneNavigation } from "./main-navigation";
import { Mark } from "./mark";
import { destinationsFor, homeFor } from "./navigation";
import { PersonMenu } from "./person-menu";
import type { Theme } from "./theme";

const ROLE_WORDS: Record<Role, string> = {
  desk: "front desk",
  manager: "manager",
  technician: "technician",
  owner: "owner",
};

interface WorkshopShellProps {
  readonly workshopName: string;
  readonly person: { readonly name: string; readonly roles: readonly Role[] };
  readonly theme: Theme;
  readonly onSignOut: () => Promise<void>;
  readonly children: ReactNode;
}

/** What every page of a signed-in person stands in. */
export function WorkshopShell({ workshopName, person, theme, onSignOut, children }: WorkshopShellProps) {
  const destinations = destinationsFor(person.roles);
  const duties = person.roles.map((role) => ROLE_WORDS[role]).join(", ");
  return (
    <div className="shell">
      <a className="skip-link" href="#content">
        Skip to the content
      </a>
      <header className="topbar">
        <Link className="workshop-name" href={homeFor(person.roles)}>
          <Mark />
          <span>{workshopName}</span>
        </Link>
        <MainNavigation destinations={destinations} />
        <GlobalSearch />
        <PersonMenu name={person.name} duties={duties} theme={theme} onSignOut={onSignOut} />
      </header>
      <main id="content" tabIndex={-1} className="content">
        {children}
      </main>
      <FollowPage contentId="content" />
      <PhoneNavigation destinations={destinations} />
    </div>
  );
}
