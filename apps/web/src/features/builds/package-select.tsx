"use client";

import type { OfferedPackage } from "@buildproof/workshop";
import { useState } from "react";
import { Select } from "@/design/select";
import { PackageChoiceFields } from "./package-choice-fields";

interface PackageSelectProps {
  readonly packages: readonly OfferedPackage[];
  readonly currency: string;
}

/** Begin with a package, and answer at once what it asks. */
export function PackageSelect({ packages, currency }: PackageSelectProps) {
  const [code, setCode] = useState("none");
  const offered = packages.find((each) => each.code === code);
  return (
    <>
      <Select
        name="packageCode"
        label="Begin with"
        value={code}
        onChange={setCode}
        options={[
          { id: "none", label: "Nothing chosen" },
          ...packages.map(({ code: id, name, outcome }) => ({ id, label: name, note: outcome })),
        ]}
      />
      {offered && <PackageChoiceFields key={offered.code} offered={offered} currency={currency} />}
    </>
  );
}
