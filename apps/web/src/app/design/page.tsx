import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Button } from "@/design/button";
import { Density } from "@/design/density";
import { Chain } from "@/design/plots/chain";
import { CurveOverlay } from "@/design/plots/curve-overlay";
import { DotStrip } from "@/design/plots/dot-strip";
import { Waterfall } from "@/design/plots/waterfall";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { WorkshopShell } from "@/shell/workshop-shell";
import { ControlsSection, FormSection } from "./controls-section";
import { sampleChain } from "./sample-chain";
import { sampleBands, sampleRuns, sampleStrips } from "./sample-curves";
import { SentencesSection, StatesSection, TableSection } from "./words-section";

export const metadata: Metadata = { title: "Design" };

async function stay() {
  "use server";
}

/** Every primitive and plot with made-up data, to look at while working on them. */
export default async function DesignPage(props: { readonly searchParams: Promise<{ density?: string }> }) {
  if (process.env.NODE_ENV === "production") notFound();
  const { density } = await props.searchParams;
  return (
    <Density of={density === "floor" ? "floor" : "desk"}>
      <WorkshopShell
        workshopName="Saltbush Dyno & Driveline"
        person={{ name: "Kim Tran", roles: ["desk", "manager", "owner"] }}
        theme="device"
        onSignOut={stay}
      >
        <Page>
          <SheetHead
            title="Ridgewold 5.7, Long Grade 2.4"
            lead="wants: tow 3.0 t, more pull in the middle, ready by 18 December"
            actions={
              <>
                <Button>Compare</Button>
                <Button variant="primary">Make a quote</Button>
              </>
            }
            facts={[
              { label: "Plate", value: "1AB 2CD" },
              { label: "Odometer", value: "24,310 km" },
              { label: "Fuel", value: "Petrol 98" },
              { label: "Tows", value: "yes, 3.0 t" },
              { label: "Version", value: "draft, saved 10:42" },
            ]}
          />
          <Section title="The chain" aside={<span className="fine">forecast, full load</span>}>
            <Chain
              caption="The chain of the build"
              paths={sampleChain}
              weakest={{
                linkId: "high-pressure-pump",
                sentence:
                  "High-pressure pump: short by 9 % at 6,000 rpm, short from 5,000. “Pump upgrade” leaves 18 % headroom.",
              }}
              action={<Button variant="primary">Add · $1,940 · 2.7 h</Button>}
            />
          </Section>
          <Columns>
            <Section title="On the dyno">
              <CurveOverlay
                caption="Baseline to proof"
                measuredAt="at the hubs, corrected to SAE J1349"
                runs={sampleRuns}
                bands={sampleBands}
                torqueLimits={[{ label: "gearbox 740 N·m", value: 740 }]}
                strips={sampleStrips}
              />
            </Section>
            <Stack>
              <SentencesSection />
              <TableSection />
              <StatesSection />
            </Stack>
          </Columns>
          <Columns>
            <FormSection />
            <ControlsSection />
          </Columns>
          <Columns>
            <Section title="What it earned">
              <Waterfall
                caption="Long Grade 2.4: margin per job, from quoted to actual"
                currency="AUD"
                startLabel="Quoted margin"
                startMinor={812_400}
                steps={[
                  {
                    id: "parts",
                    label: "Parts",
                    minor: -61_200,
                    href: "/design",
                    note: "freight on the pump",
                  },
                  { id: "labour", label: "Labour", minor: -148_000, href: "/design" },
                  { id: "sublet", label: "Bought-in work", minor: 22_000 },
                  { id: "dyno", label: "Dyno", minor: -37_500 },
                  { id: "rework", label: "Rework", minor: -54_000, href: "/design" },
                ]}
                endLabel="Actual margin"
              />
            </Section>
            <Section title="Spread between jobs">
              <DotStrip
                caption="Margin of each job, Long Grade 2.4, last 18 months"
                unit="% of sell"
                decimals={1}
                reference={{ label: "quoted 31 %", value: 31 }}
                dots={Array.from({ length: 42 }, (_, index) => ({
                  id: `${index}`,
                  label: `Job ${200 + index}`,
                  value:
                    27 + 9 * Math.sin(index * 1.7) * Math.cos(index * 0.61) - (index % 11 === 0 ? 14 : 0),
                  href: "/design",
                }))}
              />
            </Section>
          </Columns>
        </Page>
      </WorkshopShell>
    </Density>
  );
}
