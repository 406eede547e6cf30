import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Moment } from "@/design/moment";
import { RadioGroup } from "@/design/radio-group";
import { RuledTable } from "@/design/ruled-table";
import { Section } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { countGoodsInAction } from "./actions";

interface KitLine {
  readonly code: string;
  readonly name: string;
  readonly maker: string;
  readonly quantity: number;
  readonly oneUse: boolean;
  readonly returnable: boolean;
}

interface GoodsCount {
  readonly id: string;
  readonly complete: boolean;
  readonly missing: string;
  readonly countedAt: Date;
}

interface GoodsSectionProps {
  readonly jobId: string;
  readonly kit: readonly KitLine[];
  readonly counts: readonly GoodsCount[];
  readonly timeZone: string;
  readonly mayCount: boolean;
}

/** The kit list of the accepted version, and each time it was counted. */
export function GoodsSection({ jobId, kit, counts, timeZone, mayCount }: GoodsSectionProps) {
  return (
    <Section title="Kit list and goods-in">
      <RuledTable
        caption="Parts of the accepted version"
        isCaptionHidden
        columns={[
          { id: "name", title: "Part" },
          { id: "quantity", title: "Quantity", align: "figure" },
          { id: "mind", title: "To mind" },
        ]}
        rows={kit.map(({ code, name, maker, quantity, oneUse, returnable }) => ({
          id: code,
          cells: {
            name: (
              <>
                {name}
                <span className="sentence-note">{maker === "workshop" ? "from our own stores" : maker}</span>
              </>
            ),
            quantity,
            mind: mindWords(oneUse, returnable),
          },
        }))}
        empty={<p>Nothing that was accepted needs parts.</p>}
      />
      {counts.length > 0 && (
        <ol className="sentences" aria-label="Counts">
          {counts.map(({ id, complete, missing, countedAt }) => (
            <li key={id} className="sentence">
              <div>
                {complete ? "Counted complete." : `Missing: ${missing}`}
                <span className="sentence-note">
                  <Moment at={countedAt} timeZone={timeZone} />
                </span>
              </div>
            </li>
          ))}
        </ol>
      )}
      {mayCount && kit.length > 0 && (
        <ActionForm action={countGoodsInAction} label="Count the parts" resetOnSaved>
          <input type="hidden" name="jobId" value={jobId} readOnly />
          <RadioGroup
            name="complete"
            label="Opened and counted against the kit list"
            options={[
              { id: "yes", label: "Everything is here" },
              { id: "no", label: "Something is missing" },
            ]}
          />
          <TextField
            name="missing"
            label="What is missing"
            help="Part and quantity, so that it can be chased."
          />
          <div className="form-actions">
            <SubmitButton variant="quiet" pendingLabel="Recording">
              Record the count
            </SubmitButton>
          </div>
        </ActionForm>
      )}
    </Section>
  );
}

function mindWords(oneUse: boolean, returnable: boolean): string {
  return [oneUse ? "one use" : "", returnable ? "" : "cannot go back"].filter(Boolean).join(", ");
}
