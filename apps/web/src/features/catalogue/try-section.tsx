import type { TriedBuild } from "@buildproof/workshop";
import Link from "next/link";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Money } from "@/design/money";
import { NumberField } from "@/design/number-field";
import { SentenceList } from "@/design/sentence-list";
import { markSampleAction } from "./actions";

interface TrySectionProps {
  readonly sentences: readonly string[];
  readonly differing: readonly TriedBuild[];
  readonly tried: number;
  readonly notTried: number;
  readonly samples: readonly {
    readonly number: number;
    readonly customer: string;
    readonly vehicle: string;
  }[];
  readonly currency: string;
  readonly mayWrite: boolean;
}

/** What the draft would do to sample builds, open quotes and builds not quoted yet. */
export function TrySection(props: TrySectionProps) {
  const { sentences, differing, tried, notTried, currency } = props;
  return (
    <div className="grid gap-3">
      {sentences.length === 0 ? (
        <p>Tried on {tried} builds: nothing would differ.</p>
      ) : (
        <p className="font-semibold">{sentences.join(" ")}</p>
      )}
      <p className="text-ink-soft">
        Tried on {tried} {tried === 1 ? "build" : "builds"}: samples, open quotes, and what is not quoted yet.
        {notTried > 0 && ` ${notTried} older ones were not tried.`} What was issued keeps its price.
      </p>
      <SentenceList
        label="What would differ"
        sentences={differing.map((build) => ({
          id: build.id,
          sentence: <BuildName build={build} />,
          note: <Differences build={build} currency={currency} />,
        }))}
      />
      <Samples samples={props.samples} mayWrite={props.mayWrite} />
    </div>
  );
}

function BuildName({ build }: { readonly build: TriedBuild }) {
  const { id, number, quote, is, customer, vehicle } = build;
  return (
    <>
      {quote && (
        <>
          <Link href={`/quotes/${quote.id}`}>Quote {quote.number}</Link>,{" "}
        </>
      )}
      <Link href={`/builds/${id}`}>build {number}</Link> for {customer}, {vehicle}
      {is === "sample" && " (sample)"}
    </>
  );
}

function Differences({ build, currency }: { readonly build: TriedBuild; readonly currency: string }) {
  const { gains, loses, beforeMinor, afterMinor } = build;
  return (
    <>
      {gains.map((line) => (
        <span key={line} className="block">
          Would gain: {line}
        </span>
      ))}
      {loses.map((line) => (
        <span key={line} className="block">
          Would lose: {line}
        </span>
      ))}
      {beforeMinor !== afterMinor && (
        <span className="block">
          With tax <Money minor={beforeMinor} currency={currency} /> today,{" "}
          <Money minor={afterMinor} currency={currency} /> with the draft
        </span>
      )}
    </>
  );
}

function Samples({ samples, mayWrite }: Pick<TrySectionProps, "samples" | "mayWrite">) {
  if (!mayWrite && samples.length === 0) return null;
  return (
    <div className="grid gap-2">
      <h3>Sample builds</h3>
      {samples.length === 0 && <p className="text-ink-soft">None yet. Keep a few typical builds here.</p>}
      <ul>
        {samples.map(({ number, customer, vehicle }) => (
          <li key={number} className="flex flex-wrap items-center gap-3">
            Build {number} for {customer}, {vehicle}
            {mayWrite && (
              <ActionForm action={markSampleAction} label={`Build ${number} is no sample`}>
                <input type="hidden" name="number" value={number} readOnly />
                <SubmitButton variant="plain" pendingLabel="Letting go">
                  No sample any more
                </SubmitButton>
              </ActionForm>
            )}
          </li>
        ))}
      </ul>
      {mayWrite && (
        <ActionForm action={markSampleAction} label="Keep a build as a sample" resetOnSaved>
          <input type="hidden" name="isSample" value="yes" readOnly />
          <NumberField name="number" label="Build number" isWhole isRequired />
          <SubmitButton variant="quiet" pendingLabel="Keeping">
            Keep as a sample
          </SubmitButton>
        </ActionForm>
      )}
    </div>
  );
}
