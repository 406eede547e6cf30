"use client";

import { useState, useTransition } from "react";
import { Button } from "@/design/button";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { announce } from "@/design/toast";
import { revokeLinkAction } from "./actions";
import { makeLinkAction } from "./link-actions";
import type { LinkState } from "./link-state";

/** Makes the customer's link and shows it this once, to be copied into a message. */
export function MakeLink({ versionId, isFirst }: { readonly versionId: string; readonly isFirst: boolean }) {
  const [state, setState] = useState<LinkState>({ status: "none" });
  const [isPending, startTransition] = useTransition();
  const make = () => startTransition(async () => setState(await makeLinkAction(versionId)));
  return (
    <div className="grid gap-3">
      {state.status === "refused" && (
        <p role="alert" className="font-semibold text-alarm">
          {state.sentence}
        </p>
      )}
      {state.status === "made" && <MadeLink url={state.url} />}
      <div className="form-actions">
        <Button
          variant={isFirst && state.status !== "made" ? "primary" : "quiet"}
          isPending={isPending}
          pendingLabel="Making the link"
          onPress={make}
        >
          {isFirst && state.status !== "made" ? "Make the customer's link" : "Make another link"}
        </Button>
      </div>
    </div>
  );
}

function MadeLink({ url }: { readonly url: string }) {
  const copy = async () => {
    await navigator.clipboard.writeText(url);
    announce("The link is copied.");
  };
  return (
    <div className="notice grid gap-2" data-kind="saved" role="status">
      <TextField
        label="The customer's link"
        value={url}
        isReadOnly
        help="Copy it now: it is shown this once. You can always make another."
      />
      {/* Browsers hand out the clipboard on secure addresses only; the text can be selected everywhere. */}
      <div className="form-actions">
        <Button onPress={() => void copy().catch(() => announce("Select the link and copy it by hand."))}>
          Copy the link
        </Button>
      </div>
    </div>
  );
}

/** Closes a link for good. */
export function CloseLink({ linkId, made }: { readonly linkId: string; readonly made: string }) {
  return (
    <ActionForm action={revokeLinkAction} label={`Close the link of ${made}`}>
      <input type="hidden" name="linkId" value={linkId} readOnly />
      <SubmitButton variant="plain" pendingLabel="Closing">
        Close
      </SubmitButton>
    </ActionForm>
  );
}
