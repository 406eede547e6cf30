import { versionChain } from "@buildproof/workshop";
import { Chain } from "@/design/plots/chain";
import { Section } from "@/design/sheet";
import { load } from "@/server/load";
import { chainPaths, weakestLink } from "./chain-of-build";

type Sold = { readonly versionId: string } | { readonly jobId: string };

/** The chain in its small form, for what was quoted. Nothing where the build asks for nothing beyond standard. */
export async function VersionChain({ sold }: { readonly sold: Sold }) {
  const loaded = await load(versionChain, sold);
  const weakest = loaded.ok ? weakestLink(loaded.value.capacities, []) : null;
  if (!loaded.ok || !weakest) return null;
  return (
    <Section title="The chain" aside={<span className="fine">asked against given, as quoted</span>}>
      <Chain
        isSmall
        caption="Asked against given along the path of air, fuel and torque, as quoted"
        paths={chainPaths(loaded.value.capacities)}
        weakest={weakest}
      />
    </Section>
  );
}
