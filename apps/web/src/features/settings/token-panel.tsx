"use client";

import { useState, useTransition } from "react";
import { Button } from "@/design/button";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { makeTokenAction, revokeTokenAction } from "./actions";
import type { TokenState } from "./token-state";

/** Names a token, makes it, and shows it this once. */
export function MakeToken() {
  const [name, setName] = useState("");
  const [state, setState] = useState<TokenState>({ status: "none" });
  const [isPending, startTransition] = useTransition();
  const make = () =>
    startTransition(async () => {
      const made = await makeTokenAction(name);
      setState(made);
      if (made.status === "made") setName("");
    });
  return (
    <div className="grid gap-3">
      {state.status === "refused" && (
        <p role="alert" className="font-semibold text-alarm">
          {state.sentence}
        </p>
      )}
      {state.status === "made" && (
        <div className="notice grid gap-2" data-kind="saved" role="status">
          <TextField
            label={`The token of ${state.name}`}
            value={state.token}
            isReadOnly
            help="Copy it now: it is shown this once. You can always make another."
          />
        </div>
      )}
      <TextField
        label="Name of the program"
        value={name}
        onChange={setName}
        autoComplete="off"
        help="Who will use it, such as Price list."
      />
      <div className="form-actions">
        <Button isPending={isPending} pendingLabel="Making the token" onPress={make}>
          Make a token
        </Button>
      </div>
    </div>
  );
}

/** Closes a token for good. */
export function RevokeToken({ tokenId, name }: { readonly tokenId: string; readonly name: string }) {
  return (
    <ActionForm action={revokeTokenAction} label={`Revoke ${name}`}>
      <input type="hidden" name="tokenId" value={tokenId} readOnly />
      <SubmitButton variant="plain" pendingLabel="Revoking">
        Revoke
      </SubmitButton>
    </ActionForm>
  );
}
