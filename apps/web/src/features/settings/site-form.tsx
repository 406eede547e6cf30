"use client";

import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { changeSiteAction } from "./actions";

interface SiteFormProps {
  readonly site: { readonly id: string; readonly designAmbientC: number; readonly altitudeM: number };
}

/** The hot day and the altitude of the site, for which every forecast is told. */
export function SiteForm({ site }: SiteFormProps) {
  const { id, designAmbientC, altitudeM } = site;
  return (
    <ActionForm action={changeSiteAction} label="The site">
      <input type="hidden" name="siteId" value={id} />
      <input type="hidden" name="seenAmbientC" value={designAmbientC} />
      <input type="hidden" name="seenAltitudeM" value={altitudeM} />
      <NumberField
        name="designAmbientC"
        label="Hot day"
        unit="°C"
        help="The air that a build must stand here. Forecasts are told for it beside the reference."
        defaultValue={String(designAmbientC)}
        limits={{ low: -20, high: 60 }}
        isRequired
      />
      <NumberField
        name="altitudeM"
        label="Altitude above the sea"
        unit="m"
        help="Thinner air is less power on the hot day and on the road."
        defaultValue={String(altitudeM)}
        limits={{ low: -400, high: 4500 }}
        isRequired
      />
      <SubmitButton pendingLabel="Saving">Save the site</SubmitButton>
    </ActionForm>
  );
}
