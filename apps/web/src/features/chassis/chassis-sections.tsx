import type { Chassis } from "@buildproof/workshop";
import type { ReactNode } from "react";
import { Notice } from "@/design/notice";
import { Stack } from "@/design/sheet";
import { AccelerationSection } from "./acceleration-section";
import { MassSection } from "./mass-section";
import { SpeedometerSection } from "./speedometer-section";
import { TowingSection } from "./towing-section";
import { TyreSection } from "./tyre-section";

interface ChassisSectionsProps {
  readonly chassis: Chassis;
  readonly isPrinted?: boolean;
  readonly road?: ReactNode;
}

/** What the build does to the vehicle under it, as the last part of the sheet. */
export function ChassisSections({ chassis, isPrinted = false, road }: ChassisSectionsProps) {
  const { tyres, gearing, speedometer, masses, towing, acceleration, alreadyFitted } = chassis;
  return (
    <section aria-label="What it does to the vehicle" className="chassis">
      <Stack>
        <TyreSection tyres={tyres} gearing={gearing} />
        <SpeedometerSection speedometer={speedometer} />
        <AccelerationSection acceleration={acceleration} isPrinted={isPrinted} road={road} />
      </Stack>
      <Stack>
        <MassSection masses={masses} alreadyFitted={alreadyFitted} isPrinted={isPrinted} />
        <TowingSection towing={towing} />
      </Stack>
      <Notice title="Before it goes on the road">
        <p>
          Worked out from nominal sizes and the catalogue's masses. Weigh the finished vehicle, axle by axle,
          loaded as it travels. The plates on vehicle, tow bar and trailer come first; the local code decides
          what may be fitted and towed, and a licensed signatory certifies it.
        </p>
      </Notice>
    </section>
  );
}
