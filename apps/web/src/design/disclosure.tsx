"use client";

import type { ReactNode } from "react";
import { Disclosure as AriaDisclosure, Button, DisclosurePanel, Heading } from "react-aria-components";
import { Chevron } from "./chevron";

interface DisclosureProps {
  readonly title: ReactNode;
  readonly children: ReactNode;
  readonly level?: 2 | 3 | 4;
  readonly defaultExpanded?: boolean;
}

/** A line that opens to say more. */
export function Disclosure({ title, children, level = 3, defaultExpanded = false }: DisclosureProps) {
  return (
    <AriaDisclosure className="disclosure" defaultExpanded={defaultExpanded}>
      <Heading level={level}>
        <Button slot="trigger" className="disclosure-button">
          <Chevron />
          {title}
        </Button>
      </Heading>
      <DisclosurePanel className="disclosure-panel">
        <div>{children}</div>
      </DisclosurePanel>
    </AriaDisclosure>
  );
}
