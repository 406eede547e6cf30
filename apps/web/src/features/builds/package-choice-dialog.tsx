"use client";

import type { OfferedPackage } from "@buildproof/workshop";
import type { FormEvent } from "react";
import { Form } from "react-aria-components";
import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { PackageChoiceFields } from "./package-choice-fields";
import { pickedOfForm } from "./picked-of-form";

interface PackageChoiceDialogProps {
  /** The package that asks; null while none does. */
  readonly offered: OfferedPackage | null;
  readonly currency: string;
  readonly onClose: () => void;
  readonly onTaken: (picked: readonly string[]) => void;
}

/** What a package asks before it fills the build sheet. */
export function PackageChoiceDialog({ offered, currency, onClose, onTaken }: PackageChoiceDialogProps) {
  if (!offered) return null;
  const take = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    onTaken(pickedOfForm(new FormData(event.currentTarget)));
  };
  return (
    <Dialog title={offered.name} isOpen onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Form className="form" aria-label={`Choices of ${offered.name}`} onSubmit={take}>
        <p>{offered.outcome}</p>
        <PackageChoiceFields offered={offered} currency={currency} />
        <div className="form-actions">
          <Button type="submit" variant="primary">
            Take the package
          </Button>
        </div>
      </Form>
    </Dialog>
  );
}
