"use client";

import type { lookUpVin, ValueOf } from "@buildproof/workshop";
import Link from "next/link";
import { useEffect, useState } from "react";
import { TextField } from "@/design/text-field";
import { vinSentence } from "./vin-sentence";

type VinSays = ValueOf<typeof lookUpVin>;

const VIN_LENGTH = 17;
const PAUSE_IN_TYPING_MS = 250;

/** The VIN, with what it says about itself as soon as it is whole. The check digit informs and never bars. */
export function VinField({
  defaultValue,
  ownVehicleId,
}: {
  readonly defaultValue: string;
  readonly ownVehicleId?: string;
}) {
  const [typed, setTyped] = useState(defaultValue);
  const says = useVin(typed);
  return (
    <div>
      <TextField
        name="vin"
        label="VIN"
        defaultValue={defaultValue}
        onChange={setTyped}
        autoComplete="off"
        help="17 characters, as on the plate behind the windscreen. Spaces do not matter."
        isCode
        isRequired
      />
      <div aria-live="polite">{says && <VinWords says={says} ownVehicleId={ownVehicleId} />}</div>
    </div>
  );
}

interface VinWordsProps {
  readonly says: VinSays;
  readonly ownVehicleId: string | undefined;
}

function VinWords({ says, ownVehicleId }: VinWordsProps) {
  if (!says.wellFormed) return <p className="field-help">{says.problems.join(" ")}</p>;
  const isOther = says.known !== null && says.known.vehicleId !== ownVehicleId;
  return (
    <div className="field-help">
      {isOther && says.known && (
        <p>
          <strong>This vehicle is here already: </strong>
          <Link href={`/vehicles/${says.known.vehicleId}`}>
            {says.known.plate || "no plate"}, {says.known.owner}
          </Link>
        </p>
      )}
      <p>{vinSentence(says)}</p>
      {[...says.problems, ...says.notes].map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
    </div>
  );
}

function useVin(typed: string): VinSays | null {
  const [says, setSays] = useState<VinSays | null>(null);
  useEffect(() => {
    const written = typed.replace(/[\s-]/g, "");
    if (written.length < VIN_LENGTH || written.length > 2 * VIN_LENGTH) {
      setSays(null);
      return;
    }
    const overtaken = new AbortController();
    const timer = setTimeout(() => {
      askVin(written, overtaken.signal).then(
        (answer) => setSays(answer),
        // Saving judges the VIN again, so an unanswered look-up costs nothing.
        () => setSays(null),
      );
    }, PAUSE_IN_TYPING_MS);
    return () => {
      clearTimeout(timer);
      overtaken.abort();
    };
  }, [typed]);
  return says;
}

async function askVin(vin: string, signal: AbortSignal): Promise<VinSays | null> {
  const answer = await fetch(`/api/vin?vin=${encodeURIComponent(vin)}`, { signal });
  // The route is our own and answers in this shape.
  return answer.ok ? ((await answer.json()) as VinSays) : null;
}
