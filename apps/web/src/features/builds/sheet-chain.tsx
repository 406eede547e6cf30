"use client";

import type { ShownSheet } from "@buildproof/workshop";
import { Chain } from "@/design/plots/chain";
import { Section } from "@/design/sheet";
import { chainPaths, weakestLink } from "./chain-of-build";
import { FixButton } from "./finding-list";
import { useSheet } from "./use-sheet";

/** Asked against given along the vehicle, with the weakest link named. */
export function SheetChain({ sheet }: { readonly sheet: ShownSheet }) {
  const { mayWrite } = useSheet();
  const weakest = weakestLink(sheet.capacities, sheet.findings);
  const [fix] = weakest?.finding?.fixes ?? [];
  return (
    <Section title="The chain" aside={<span className="fine">asked against given, full load</span>}>
      {weakest ? (
        <Chain
          caption="Asked against given along the path of air, fuel and torque"
          paths={chainPaths(sheet.capacities)}
          weakest={weakest}
          action={mayWrite && fix && <FixButton fix={fix} isOnly currency={sheet.site.currency} />}
        />
      ) : (
        <p className="fine">Nothing is asked beyond what the vehicle gives as standard.</p>
      )}
    </Section>
  );
}
